package slantlight.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.light.SourceKind;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sheet.Words;

/** The report's answer in three sentences: what shows, what to specify, what it takes. */
final class Answer {
  private static final int NAMED = 4;

  private final ReportData data;
  private final House house;

  Answer(ReportData data) {
    this.data = data;
    this.house = data.score().house();
  }

  List<String> sentences() {
    return List.of(what(), specify(), takes());
  }

  /** Scored surfaces, worst first. */
  List<SurfaceScore> worstFirst() {
    return data.score().surfaces().stream()
        .sorted(Comparator.comparingDouble((SurfaceScore s) -> -Showing.at(s, 4)))
        .toList();
  }

  private String what() {
    List<SurfaceScore> sorted = worstFirst();
    List<SurfaceScore> over = sorted.stream().filter(this::aboveLimit).toList();
    if (sorted.isEmpty()) {
      return "No surface of this house is drywall, so nothing was judged.";
    }
    SurfaceScore worst = sorted.get(0);
    Optional<Peak> peak = Showing.worst(worst);
    if (peak.isEmpty() || Showing.at(worst, 4) < Band.TRACE.from()) {
      return "At level 4 no joint of this house can be noticed at any hour of the year.";
    }
    String place =
        label(worst)
            + (over.isEmpty() ? ", where " : ": ")
            + Showing.worstJoint(worst).map(Answer::jointName).orElse("a fastener spot")
            + " shows at "
            + Words.times(peak.get().showing())
            + " what the eye notices unasked, on "
            + Words.when(peak.get())
            + ", because "
            + cause(peak.get())
            + ".";
    return over.isEmpty()
        ? "At level 4 every surface stays within what its room bears; most shows on the " + place
        : "At level 4, "
            + (over.size() == sorted.size() && over.size() > 1
                ? "all " + sorted.size()
                : count(over.size()) + " of " + sorted.size())
            + (sorted.size() == 1 ? " surface" : " surfaces")
            + " will show more than "
            + (over.size() == 1 ? "its room bears" : "their rooms bear")
            + ", worst the "
            + place;
  }

  private String specify() {
    List<Verdict> five = atLevel(5);
    List<Verdict> four = atLevel(4);
    List<Verdict> low = data.verdicts().stream().filter(v -> v.level() < 4).toList();
    List<String> parts = new ArrayList<>();
    if (!five.isEmpty()) {
      parts.add("level 5 on " + names(five) + " (" + area(five) + ")");
    }
    if (!four.isEmpty()) {
      parts.add(
          "level 4 on " + (five.isEmpty() ? names(four) : rest(four)) + " (" + area(four) + ")");
    }
    if (!low.isEmpty()) {
      parts.add("a lower level on " + rest(low) + " (" + area(low) + ")");
    }
    if (parts.isEmpty()) {
      return "No finish level was decided.";
    }
    return "Specify " + join(parts) + ".";
  }

  private String takes() {
    long unsolved = data.verdicts().stream().filter(Verdict::unsolved).count();
    String left =
        unsolved == 0
            ? ""
            : " On "
                + (unsolved == 1 ? "1 surface" : unsolved + " surfaces")
                + " even level 5 is not enough by itself.";
    if (data.money().isPresent()) {
      ReportData.Money money = data.money().get();
      String free =
          money.free().isEmpty() ? "" : "First do what is free: " + join(money.free()) + "; then ";
      Optional<String> plan =
          money
              .proposed()
              .map(
                  s ->
                      money.byArea()
                          ? "the proposed plan adds " + price(money, s.price()) + " of work"
                          : "the proposed plan costs "
                              + price(money, s.price())
                              + " over the house as it is");
      if (plan.isPresent()) {
        return capital(free + plan.get() + ".") + left;
      }
    }
    List<String> notes =
        worstFirst().stream()
            .map(s -> data.verdict(s.surfaceId()))
            .flatMap(Optional::stream)
            .flatMap(v -> v.notes().stream())
            .limit(1)
            .toList();
    return notes.isEmpty()
        ? "Nothing else is needed for the light." + left
        : "First look at the boards and the light: " + lower(trimDot(notes.get(0))) + "." + left;
  }

  static String price(ReportData.Money money, double price) {
    return String.format(java.util.Locale.ROOT, "%,.0f %s", price, money.unit());
  }

  boolean aboveLimit(SurfaceScore s) {
    Surface surface = house.surface(s.surfaceId());
    return Showing.worst(s).isPresent()
        && !Showing.borne(s, 4, house.room(surface.roomId()).attention());
  }

  static String jointName(JointScore j) {
    return Words.word(j.joint().kind()) + " joint " + Words.shortId(j.joint().id());
  }

  private List<Verdict> atLevel(int level) {
    return data.verdicts().stream().filter(v -> v.level() == level).toList();
  }

  private String names(List<Verdict> verdicts) {
    if (verdicts.size() > NAMED) {
      boolean all = verdicts.size() == data.verdicts().size();
      return (all ? "all " : "") + verdicts.size() + " surfaces";
    }
    return join(verdicts.stream().map(v -> house.surface(v.surfaceId()).label()).toList());
  }

  private String rest(List<Verdict> verdicts) {
    return verdicts.size() == 1
        ? house.surface(verdicts.get(0).surfaceId()).label()
        : "the other " + verdicts.size();
  }

  private String area(List<Verdict> verdicts) {
    return Words.area(
        verdicts.stream().mapToDouble(v -> house.surface(v.surfaceId()).face().area()).sum());
  }

  private String label(SurfaceScore s) {
    return house.surface(s.surfaceId()).label();
  }

  static String join(List<String> parts) {
    if (parts.size() < 2) {
      return String.join("", parts);
    }
    return String.join(", ", parts.subList(0, parts.size() - 1))
        + " and "
        + parts.get(parts.size() - 1);
  }

  private static String count(int n) {
    String[] words = {"none", "one", "two", "three", "four", "five", "six", "seven", "eight"};
    return n < words.length ? words[n] : Integer.toString(n);
  }

  private static String trimDot(String s) {
    return s.endsWith(".") ? s.substring(0, s.length() - 1) : s;
  }

  private static String lower(String s) {
    return s.isEmpty() ? s : s.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + s.substring(1);
  }

  static String capital(String s) {
    return s.isEmpty() ? s : s.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + s.substring(1);
  }

  /** Bounced light comes from everywhere: its mean angle tells nothing. */
  private static String cause(Peak peak) {
    if (peak.source().kind() == SourceKind.BOUNCE) {
      return "of light bounced by the room";
    }
    String verb = Math.toDegrees(peak.grazing()) < 20 ? " meets it at only " : " meets it at ";
    return peak.source().label() + verb + Words.deg(peak);
  }
}
