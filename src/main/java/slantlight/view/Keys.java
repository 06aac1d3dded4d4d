package slantlight.view;

import java.util.List;

/** Every key and what it does: the one list that the key card prints and the window obeys. */
final class Keys {
  private Keys() {}

  /** One row of the card. */
  record Row(String keys, String does) {}

  /** Rows under one heading. */
  record Group(String title, List<Row> rows) {}

  static final List<Group> ALL =
      List.of(
          new Group(
              "Look",
              List.of(
                  new Row("1  2  3", "risk, boards, as lit"),
                  new Row("M", "joints by year, moment or hours"),
                  new Row("Tab", "room and sheet, room, sheet"),
                  new Row("Enter", "present; arrows step the stops"),
                  new Row("K", "keep a still as PNG"),
                  new Row("F", "whole screen"),
                  new Row("H", "this card"),
                  new Row("Esc", "back; nothing chosen"),
                  new Row("Ctrl Q", "close; window and camera are kept"))),
          new Group(
              "Go",
              List.of(
                  new Row("rest click", "short reasons; all of them"),
                  new Row("drag", "turn round; look round inside"),
                  new Row("wheel", "nearer, farther"),
                  new Row("W A S D", "walk at eye height"),
                  new Row("O", "outside"),
                  new Row("R", "next room"),
                  new Row("E", "next eye point"),
                  new Row("N", "next surface, worst first"),
                  new Row("J", "next joint of the surface"))),
          new Group(
              "Time",
              List.of(
                  new Row("Left Right", "quarter of an hour"),
                  new Row("Up Down", "a day; with Shift a month"),
                  new Row("Space", "play the day"),
                  new Row("Y", "play the year"),
                  new Row("T", "worst moment of what is chosen"),
                  new Row("C", "clear, partly cloudy, overcast"))),
          new Group(
              "As lit",
              List.of(
                  new Row("V", "split: levels, paints, none"),
                  new Row("L", "finish level"),
                  new Row("P", "a dark paint, the scene's paint"),
                  new Row("G", "sheen of the paint tried"),
                  new Row("X", "strength of ridges; 1 is true"))));
}
