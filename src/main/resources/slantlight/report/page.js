'use strict';
(function () {
  var root = document.documentElement;
  document.querySelectorAll('.tools').forEach(function (t) { t.hidden = false; });
  var theme = document.getElementById('theme');
  function dark() {
    return root.dataset.theme ? root.dataset.theme === 'dark'
      : window.matchMedia('(prefers-color-scheme: dark)').matches;
  }
  function name() { theme.textContent = dark() ? 'Light paper' : 'Dark paper'; }
  theme.addEventListener('click', function () {
    root.dataset.theme = dark() ? 'light' : 'dark';
    name();
  });
  name();
  var rooms = document.getElementById('room');
  var count = document.getElementById('count');
  rooms.addEventListener('change', function () {
    var shown = 0;
    document.querySelectorAll('[data-room]').forEach(function (e) {
      e.hidden = rooms.value !== '' && e.dataset.room !== rooms.value;
      if (!e.hidden && e.tagName === 'ARTICLE') { shown++; }
    });
    count.textContent = rooms.value === '' ? '' : shown + (shown === 1 ? ' surface' : ' surfaces');
  });
  window.addEventListener('beforeprint', function () {
    document.querySelectorAll('details').forEach(function (d) { d.open = true; });
  });
  var months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August',
    'September', 'October', 'November', 'December'];
  function two(n) { return (n < 10 ? '0' : '') + n; }
  document.querySelectorAll('[data-calendar]').forEach(function (figure) {
    var d = JSON.parse(figure.dataset.calendar);
    var svg = figure.querySelector('svg');
    var out = figure.querySelector('.readout');
    var row = 0;
    var column = Math.floor(d.columns / 2);
    function tell() {
      var at = 2 * (row * d.columns + column);
      var showing = parseInt(d.cells.substr(at, 2), 36) / 10;
      var day = new Date(Date.UTC(d.year, 0, d.days[row]));
      var minute = column * d.step;
      out.textContent = day.getUTCDate() + ' ' + months[day.getUTCMonth()] + ', '
        + two(Math.floor(minute / 60)) + ':' + two(minute % 60) + ': '
        + (showing > 0 ? showing.toFixed(1) + ' \u00d7 the threshold' : 'nothing shows');
    }
    svg.addEventListener('pointermove', function (e) {
      var box = svg.getBoundingClientRect();
      var x = (e.clientX - box.left) / box.width * d.page;
      var y = (e.clientY - box.top) / box.height * d.high;
      var day = 1 + (x - d.left) / d.width * d.length;
      var hour = d.from + (y - d.top) / d.hour;
      if (day < 1 || day > d.length + 1 || hour < d.from || hour >= d.to) { return; }
      row = 0;
      d.days.forEach(function (n, i) {
        if (Math.abs(n - day) < Math.abs(d.days[row] - day)) { row = i; }
      });
      column = Math.min(d.columns - 1, Math.floor(hour * 60 / d.step));
      tell();
    });
    figure.querySelector('.sheet').addEventListener('keydown', function (e) {
      var move = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[e.key];
      if (!move) { return; }
      e.preventDefault();
      row = Math.max(0, Math.min(d.days.length - 1, row + move[0]));
      column = Math.max(0, Math.min(d.columns - 1, column + move[1]));
      tell();
    });
  });
}());
