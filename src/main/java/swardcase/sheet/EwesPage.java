package swardcase.sheet;

import java.util.List;
import swardcase.chance.Drawn;
import swardcase.paper.Cell;
import swardcase.paper.Column;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.MobResult;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Ewes and oestrogen: a screening estimate of what the flock loses, and when it eats how much. */
final class EwesPage {

  private final Flow flow;
  private final Report report;

  EwesPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
  }

  void draw() {
    flow.section(Texts.get("ewes.heading"));
    Reproduction flock = report.reproduction();
    flow.paragraph(OestrogenWords.flock(flock), Style.BODY_BOLD);
    flow.paragraph(Texts.get("ewes.vet"), Style.BODY);
    totals(flock);
    flow.part(Texts.get("ewes.mobs"));
    mobs(flock);
    if (!flock.dose().isEmpty()) {
      dose(flock);
    }
  }

  private void totals(Reproduction flock) {
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.flock"), 357),
                Column.numbers(Texts.get("column.value"), 150)));
    table.head();
    total(table, "ewes.joined", Words.exact(flock.ewesJoined()));
    total(table, "ewes.unaffected", Words.range(flock.pregnantPercentUnaffected()));
    total(table, "ewes.affected", Words.range(flock.pregnantPercent()));
    total(table, "ewes.sterile", Words.range(flock.sterilePercent()));
    total(table, "ewes.lambs", Words.count(flock.lambsLostPerYear()));
    total(table, "ewes.cost", Words.money(report.farm().currency(), flock.costPerYear()));
    flow.gap(4);
  }

  private static void total(Table table, String key, String value) {
    table.row(List.of(Cell.of(Texts.get(key)), Cell.of(value)));
  }

  private void mobs(Reproduction flock) {
    if (flock.mobs().isEmpty()) {
      flow.paragraph(Texts.get("ewes.noMobs"), Style.BODY);
      return;
    }
    Table table =
        new Table(
            flow,
            List.of(
                Column.words(Texts.get("column.mob"), 135),
                Column.numbers(Texts.get("column.ewes"), 50),
                Column.words(Texts.get("column.joining"), 100),
                Column.numbers(Texts.get("column.dose"), 72),
                Column.numbers(Texts.get("column.unaffected"), 75),
                Column.numbers(Texts.get("column.affected"), 75),
                Column.below(Texts.get("column.finding"))));
    table.head();
    for (MobResult mob : flock.mobs()) {
      table.row(
          List.of(
              Cell.of(mob.name(), Style.CELL_BOLD),
              Cell.of(Words.exact(mob.ewes())),
              Cell.of(OestrogenWords.joining(mob.joining())),
              Cell.of(mob.doseAtJoining()),
              Cell.of(mob.pregnantPercentUnaffected()),
              Cell.of(mob.pregnantPercent()),
              Cell.of(OestrogenWords.mob(mob, flock))));
    }
    flow.gap(4);
  }

  private void dose(Reproduction flock) {
    flow.need(DoseChart.HEIGHT + 60);
    flow.part(Texts.get("ewes.dose"));
    flow.paragraph(Texts.get("ewes.dose.note"), Style.NOTE);
    DoseMonth most = flock.dose().get(flock.highestDoseIn().ordinal());
    Drawn highest = most.formononetinPercentOfIntake();
    flow.figure(
        DoseChart.HEIGHT,
        Texts.get("ewes.dose.alt", Words.shortName(most.month()), Words.range(highest)),
        new DoseChart(flock.dose(), flow.lettering())::paint);
  }
}
