package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.JoiningReport;
import swardcase.report.JoiningReport.Direction;
import swardcase.report.JoiningReport.OtherDate;
import swardcase.report.JoiningReport.Resow;
import swardcase.report.JoiningReport.SafeFeed;
import swardcase.report.JoiningReport.Shortage;

/** What is missing of safe feed, the ways out, and what more of it is worth, in sentences. */
public final class SafeFeedWords {

  private final SafeFeed feed;
  private final String supplement;
  private final String currency;

  /** The words for the safe feed of a plan. */
  public SafeFeedWords(JoiningReport report) {
    feed = report.safeFeed();
    supplement = report.farm().supplement();
    currency = report.farm().currency();
  }

  /** Whether it is short, when and by how much. */
  public String statement() {
    return feed.shortage().map(this::isShort).orElse(Texts.get("safe.enough"));
  }

  private String isShort(Shortage shortage) {
    return Texts.get(
        "safe.short",
        Words.about(shortage.energyMj()),
        supplement,
        Words.about(shortage.tonnes()),
        JoiningWords.day(shortage.from()),
        JoiningWords.day(shortage.to()));
  }

  /** What could be done, a sentence each. */
  public List<String> waysOut() {
    List<String> out = new ArrayList<>();
    feed.shortage().ifPresent(shortage -> out.add(buy(shortage)));
    feed.otherDates().forEach(date -> out.add(otherDate(date)));
    feed.resow().ifPresent(resow -> out.add(resow(resow)));
    return out;
  }

  private String buy(Shortage shortage) {
    return Texts.get(
        "safe.buy",
        Words.about(shortage.tonnes()),
        supplement,
        Words.aboutMoney(currency, shortage.cost()));
  }

  private String otherDate(OtherDate date) {
    boolean later = date.direction() == Direction.LATER;
    if (date.planCost().isEmpty()) {
      return Texts.get(later ? "safe.notLater" : "safe.notEarlier", date.weeks());
    }
    return Texts.get(
        later ? "safe.later" : "safe.earlier",
        date.weeks(),
        Words.aboutMoney(currency, feed.planCost()),
        Words.aboutMoney(currency, date.planCost().getAsDouble()));
  }

  private String resow(Resow resow) {
    return Texts.get(
        "safe.resow",
        resow.paddock(),
        resow.actionName(),
        Words.aboutMoney(currency, resow.freed()),
        resow.fromYear(),
        Words.aboutMoney(currency, resow.cost()));
  }

  /** What one more tonne of supplement's worth of it is worth when it is scarcest. */
  public String worth() {
    if (feed.worthPerTonne() < 1) {
      return Texts.get("safe.worthNothing");
    }
    return Texts.get(
        "safe.worth",
        JoiningWords.day(feed.scarcestFrom()),
        supplement,
        Words.aboutMoney(currency, feed.worthPerTonne()),
        Words.aboutMoney(currency, feed.pricePerTonne()));
  }
}
