package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page in a real browser, where one is installed (CI installs one). */
class ReportBrowserTest {
  /**
   * Text whose contrast with what lies behind it is under WCAG 2.1's 4.5 to 1; big or strong text
   * is held to the same.
   */
  private static final String LOW_CONTRAST =
      """
      (() => {
        const lin = c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
        const parse = s => (s.match(/[\\d.]+/g) || []).map(Number);
        const lum = c => 0.2126 * lin(c[0] / 255) + 0.7152 * lin(c[1] / 255) + 0.0722 * lin(c[2] / 255);
        const behind = e => {
          for (; e; e = e.parentElement) {
            const c = parse(getComputedStyle(e).backgroundColor);
            if (c.length === 3 || c[3] > 0.99) return c;
          }
          return [255, 255, 255];
        };
        const bad = [];
        document.querySelectorAll('body *').forEach(e => {
          const svg = e.tagName === 'text';
          const own = [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim());
          if (!own || e.closest('[hidden]') || e.closest('title,desc,script,style')) return;
          if (svg && e.closest('g') && /lamps|windows/.test(e.closest('g').id)
              && e.classList.contains('f-paper')) return;
          const style = getComputedStyle(e);
          const a = lum(parse(svg ? style.fill : style.color));
          const b = lum(behind(svg ? e.closest('svg').parentElement : e));
          const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
          if (ratio < 4.5) bad.push(e.tagName + '.' + (e.getAttribute('class') || '') + ' '
              + ratio.toFixed(2) + ' ' + e.textContent.trim().slice(0, 30));
        });
        return bad;
      })()
      """;

  @TempDir static Path folder;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void start() throws Exception {
    assumeTrue(Browser.installed().isPresent(), "no Chromium on this machine");
    page = folder.resolve("report.html");
    Files.writeString(page, ReportPage.forScreen(TestReports.data(), PrintedSheets.THAT_MATTER));
    browser = Browser.start(Browser.installed().get(), folder.resolve("profile"));
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 820, 1440})
  void nothingOverflowsThePage(int width) throws Exception {
    browser.open(page.toUri(), width, 900);
    assertThat(browser.evaluate("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
    assertThat(browser.complaints()).isEmpty();
  }

  /** Nor does a name without a space in it, such as one pasted by mistake. */
  @ParameterizedTest
  @ValueSource(ints = {390, 820})
  void longNamesDoNotOverflowThePage(int width) throws Exception {
    Path named = folder.resolve("named.html");
    Files.writeString(
        named,
        ReportPage.forScreen(
            TestReports.withNames("Wohnzimmer".repeat(9)), PrintedSheets.THAT_MATTER));
    browser.open(named.toUri(), width, 900);
    assertThat(browser.evaluate("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(width);
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark"})
  void textStandsOutOnBothPapers(String paper) throws Exception {
    browser.media("prefers-color-scheme", paper);
    browser.open(page.toUri(), 1200, 900);
    JsonNode bad = browser.evaluate(LOW_CONTRAST);
    assertThat(bad).as(bad.toString()).isEmpty();
    browser.media("prefers-color-scheme", "light");
  }

  /** Printed, the page leaves out the same sheets as the PDF and says so, sheets last. */
  @Test
  void printedThePageIsShort() throws Exception {
    String shown =
        "[...document.querySelectorAll('article')].filter(e => e.offsetHeight > 0).length";
    String said = "document.querySelector('p.onpaper').offsetHeight > 0";
    String last =
        "document.getElementById('surfaces').offsetTop"
            + " > document.getElementById('limits').offsetTop";
    browser.open(page.toUri(), 820, 900);
    assertThat(browser.evaluate(shown).asInt()).isEqualTo(2);
    assertThat(browser.evaluate(said).asBoolean()).isFalse();
    assertThat(browser.evaluate(last).asBoolean()).isFalse();
    browser.print(true);
    assertThat(browser.evaluate(shown).asInt()).isEqualTo(1);
    assertThat(browser.evaluate(said).asBoolean()).isTrue();
    assertThat(browser.evaluate(last).asBoolean()).isTrue();
    browser.print(false);
  }

  @Test
  void everyPictureHasItsWords() throws Exception {
    browser.open(page.toUri(), 1200, 900);
    assertThat(browser.evaluate("[...document.images].filter(i => !i.alt).length").asInt())
        .isZero();
    assertThat(
            browser
                .evaluate(
                    "[...document.querySelectorAll('svg')].filter(s => s.getAttribute('role') !=="
                        + " 'img' || !s.querySelector('title').textContent).length")
                .asInt())
        .isZero();
    assertThat(browser.evaluate("document.documentElement.lang").asText()).isEqualTo("en");
    assertThat(browser.evaluate("document.querySelectorAll('[id]').length").asInt())
        .isEqualTo(
            browser
                .evaluate("new Set([...document.querySelectorAll('[id]')].map(e => e.id)).size")
                .asInt());
  }

  @Test
  void theFilterTheSwitchAndTheCalendarWorkFromTheKeyboard() throws Exception {
    browser.open(page.toUri(), 1200, 900);
    browser.evaluate("document.getElementById('theme').focus()");
    browser.press("Enter");
    browser.evaluate("document.getElementById('theme').click()");
    assertThat(browser.evaluate("document.documentElement.dataset.theme").asText()).isNotEmpty();
    browser.evaluate(
        "const r = document.getElementById('room'); r.value = 'room';"
            + " r.dispatchEvent(new Event('change'))");
    assertThat(browser.evaluate("document.getElementById('count').textContent").asText())
        .isEqualTo("2 surfaces");
    browser.evaluate("document.querySelector('[data-calendar] .sheet').focus()");
    browser.press("ArrowRight");
    assertThat(
            browser
                .evaluate("document.querySelector('[data-calendar] .readout').textContent")
                .asText())
        .matches("8 January, 12:00: [0-9.]+ \u00d7 the threshold");
    assertThat(browser.complaints()).isEmpty();
  }

  /** Without script nothing is missing but the tools that need it. */
  @Test
  void thePageIsWholeWithoutScript() throws Exception {
    browser.script(false);
    browser.open(page.toUri(), 1200, 900);
    browser.script(true);
    assertThat(browser.evaluate("document.querySelector('.tools').hidden").asBoolean()).isTrue();
    assertThat(browser.evaluate("document.querySelectorAll('article').length").asInt())
        .isEqualTo(2);
    assertThat(browser.evaluate("document.querySelectorAll('article[hidden]').length").asInt())
        .isZero();
  }
}
