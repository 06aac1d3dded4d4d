package slantlight.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.sheet.Ink;

/**
 * The report as one XHTML page that needs nothing from outside: styles, fonts, pictures and the
 * small script are in it, and a content policy forbids anything else. Without the script the page
 * is complete; the script adds the room filter, the paper switch and the values of the calendars.
 */
public final class ReportPage {
  private ReportPage() {}

  /**
   * The page for a browser.
   *
   * @param printed sheets that remain when it is printed
   */
  public static String forScreen(ReportData data, PrintedSheets printed) {
    String script = Resource.text("report/page.js");
    Html html = new Html();
    html.markup("<!DOCTYPE html>\n");
    html.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; script-src "
            + "'sha256-"
            + sha256(script)
            + "'");
    html.empty("meta", "name", "generator", "content", "Slantlight " + data.made().version());
    html.leaf("title", title(data));
    html.open("style").markup(fonts() + inks() + Resource.text("report/screen.css")).close();
    html.close();
    html.open("body");
    html.leaf("a", "Skip to the answer", "class", "skip", "href", "#answer");
    ReportBody body = new ReportBody(html, data, false, printed);
    html.open("header", "class", "top");
    body.head();
    navigation(html);
    tools(html, data.score().house());
    html.close();
    html.open("main");
    body.sections();
    html.close();
    body.foot();
    html.open("script").markup(script).close();
    html.close().close();
    return html.toString();
  }

  /** The page that is turned into PDF: the same words and drawings, no script. */
  static String forPaper(ReportData data, PrintedSheets printed) {
    Html html = new Html();
    html.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
    html.open("head").leaf("title", title(data));
    html.empty("meta", "name", "author", "content", "Slantlight " + data.made().version());
    html.empty("meta", "name", "subject", "content", "scene " + data.made().sceneHash());
    // Drawings find their fonts by these rules; a browser has a wide font of its own.
    String wide = face("DejaVu Sans", "DejaVuSans", 400);
    html.open("style").markup(fonts() + wide + Resource.text("report/paper.css")).close().close();
    html.open("body");
    ReportBody body = new ReportBody(html, data, true, printed);
    body.head();
    body.sections();
    body.foot();
    html.close().close();
    return html.toString();
  }

  static String title(ReportData data) {
    return "Joints under raking light: " + data.score().house().name();
  }

  private static void navigation(Html html) {
    html.open("nav", "aria-label", "Sections").open("ul");
    String[][] links = {
      {"answer", "Answer"},
      {"schedule", "Finish schedule"},
      {"cost", "Cost"},
      {"surfaces", "Surfaces"},
      {"quantities", "What to order"},
      {"cuts", "Cut list"},
      {"inspection", "Inspection"},
      {"site", "Sun and site"},
      {"limits", "Assumptions and limits"}
    };
    for (String[] link : links) {
      html.open("li").leaf("a", link[1], "href", "#" + link[0]).close();
    }
    html.close().close();
  }

  private static void tools(Html html, House house) {
    html.open("div", "class", "tools", "hidden", "hidden");
    html.open("label").text("Room ").open("select", "id", "room");
    html.leaf("option", "all rooms", "value", "");
    for (Room room : house.rooms()) {
      html.leaf("option", room.label(), "value", room.id());
    }
    html.close().close();
    html.leaf("button", "Dark paper", "type", "button", "id", "theme");
    html.leaf("span", "", "id", "count", "role", "status");
    html.close();
  }

  private static String fonts() {
    return face("Barlow", "Barlow-Regular", 400) + face("Barlow", "Barlow-SemiBold", 600);
  }

  private static String face(String family, String file, int weight) {
    String data = Base64.getEncoder().encodeToString(Resource.bytes("fonts/" + file + ".ttf"));
    return "@font-face{font-family:'"
        + family
        + "';font-weight:"
        + weight
        + ";src:url(data:font/ttf;base64,"
        + data
        + ") format('truetype')}\n";
  }

  /** The inks as CSS variables for both papers, and the classes that drawings use. */
  private static String inks() {
    StringBuilder light = new StringBuilder();
    StringBuilder dark = new StringBuilder();
    StringBuilder classes = new StringBuilder();
    for (Ink ink : Ink.values()) {
      light.append("--").append(ink.key()).append(':').append(ink.hex()).append(';');
      dark.append("--").append(ink.key()).append(':').append(ink.darkHex()).append(';');
      classes.append(".f-").append(ink.key()).append("{fill:var(--").append(ink.key());
      classes.append(")}.s-").append(ink.key()).append("{stroke:var(--").append(ink.key());
      classes.append(")}\n");
    }
    light.append("--desk:#f6f3ec;--rule:#d9d3c6;");
    light.append("--on-quiet:#22282c;--on-trace:#22282c;--on-plain:#ffffff;--on-loud:#ffffff;");
    dark.append("--desk:#14191d;--rule:#3a4248;");
    dark.append("--on-quiet:#f2eee4;--on-trace:#ffffff;--on-plain:#14191d;--on-loud:#14191d;");
    return ":root{"
        + light
        + "}\n@media (prefers-color-scheme:dark){:root:not([data-theme=light]){"
        + dark
        + "}}\n:root[data-theme=dark]{"
        + dark
        + "color-scheme:dark}\n:root[data-theme=light]{color-scheme:light}\n@media print{:root,"
        + ":root[data-theme=dark]{"
        + light
        + "}}\n"
        + classes;
  }

  private static String sha256(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
