#include "report/text/print.h"

/* "1 roll of 4 ft x 50 ft, of which 0.78 is used: each is cut across into lengths ...". */
static void print_liner(const struct report *report)
{
	const struct liners *liners = &report->takeoff->liners;
	const char *joins = "";

	if (liners->rolls == 0)
		return;
	print_blank(report);
	print_alike(report, &liner_table, liners->list, liners->count);
	print_blank(report);
	print_lines(report, 0, 2, "Liner is permeable fabric: water must pass it. It is cut into:");
	print_rows(report, &liner_cut_table, liners->cuts, liners->cut_count, 2, NULL);
	if (liners->joins > 0)
		joins = say(report, ", and with the same where one goes on with another or lies "
			"above it: %s", word_count(report, liners->joins, "time", "times"));
	print_lines(report, 2, 2, "%s of %s x %s, of which %s %s used: %s. Strips close with a lap "
		"of %s%s.", word_count(report, liners->rolls, "roll", "rolls"),
		word_length(report, liners->width), word_length(report, liners->roll),
		plain_decimal(report, liners->used, 2), liners->used <= 1 ? "is" : "are",
		word_heading(&liner_way_words[liners->way]), word_inches(report, liners->lap),
		joins);
}

void print_stone(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	const struct stones *stones = &takeoff->stones;

	if (stones->count == 0 && takeoff->liners.count == 0 && takeoff->fabric.rolls == 0)
		return;
	page_heading(report->out, "Stone and fabric");
	if (stones->count > 0) {
		print_rows(report, &stone_layer_table, stones->layers, stones->layer_count, 0,
			NULL);
		print_blank(report);
		print_rows(report, &stone_total_table, stones->totals, STONE_KINDS, 0, NULL);
	}
	print_fabric(report);
	print_liner(report);
	print_note(report, "Depths and volumes compacted; stone is ordered loose, with what is "
		"spare.%s%s", stones->totals[STONE_KIND_BASE].compacted <= 0 ? "" :
		say(report, " Layers are spread and tamped one at a time, each %s thick at most, "
		"%s with a hand tamper.",
		plain_length(report, stone_layer_most(TAMPER_PLATE, report->units)),
		plain_length(report, stone_layer_most(TAMPER_HAND, report->units))),
		takeoff->liners.rolls == 0 ? "" : " Liner: round the inside of the walls, as high "
		"as the soil at the wall and what is turned under.");
}

static bool has_choice(const struct report *report, enum plot_class class, enum attribute a,
	int64_t choice)
{
	const struct areas *areas = &report->takeoff->areas;

	for (int i = 0; i < areas->count; i++) {
		const struct entry *entry = areas->list[i].entry;

		if (areas->list[i].cells > 0 && entry && entry->class == class &&
			block_number(&entry->block, a) == choice)
			return true;
	}
	return false;
}

static bool has_fact(const struct report *report, uint64_t fact)
{
	return (report->takeoff->work.facts & fact) != 0;
}

/* Where there is edging, and what holds an edge in place of it. */
static void print_edged(const struct report *report)
{
	bool has_paths = has_choice(report, CLASS_PATH, PATH_EDGING, CHOICE_YES);
	bool has_level = has_choice(report, CLASS_BED, BED_BUILD, BUILD_LEVEL);
	const char *along = has_paths && has_level ? "paths and ground-level beds" :
		has_paths ? "paths" : "ground-level beds";
	const char *holders[] = {
		has_fact(report, FACT(WALLS)) ? "a raised bed's wall" : NULL,
		has_fact(report, FACT(FIXTURES)) ? "a fixture" : NULL,
		block_number(report->takeoff->allow, ALLOW_HELD) ? "a held side of the plan" : NULL,
	};
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < sizeof holders / sizeof *holders; i++)
		if (holders[i])
			text_print(&words, "%s%s", words.length ? " or " : " None where ",
				holders[i]);
	print_lines(report, 0, 0, "Along %s, each edge once.%s%s%s A run goes straight on as long "
		"as there is an edge on its line.", along, words.bytes ? words.bytes : "",
		words.length ? " holds the edge." : "",
		has_paths ? " None between two paths." : "");
	text_fini(&words);
}

void print_edging(const struct report *report)
{
	const struct edging *edging = &report->takeoff->edging;
	static const char *const headings[] = { "Pieces", "Saw each into" };

	if (edging->runs == 0)
		return;
	page_heading(report->out, "Edging");
	print_edged(report);
	print_rows(report, &edging_row_table, edging->rows, edging->row_count, 2, NULL);
	print_lines(report, 2, 2, "In all %s in %s. %s: one at each end of a run, no two more than "
		"%s apart.", word_length(report, edging->length),
		word_count(report, edging->runs, "run", "runs"),
		word_count(report, edging->spikes, "spike", "spikes"),
		word_inches(report, edging->spacing));
	print_lines(report, 2, 2, "%s of %s: %s, %s. A run is laid of its whole pieces and one "
		"sawn to the rest.%s", word_count(report, edging->bought, "piece", "pieces"),
		word_length(report, edging->piece), word_count(report, edging->whole, "whole",
		"whole"), word_count(report, edging->cut_up, "cut up", "cut up"),
		edging->cut_count == 0 ? "" : say(report, " Each is sawn %s shorter than its "
			"place; a saw cut takes %s.", word_inches(report, edging->fit),
			word_inches(report, edging->kerf)));
	if (edging->cut_count > 0)
		print_blank(report);
	print_cut_table(report, headings, edging->cuts, edging->cut_count, edging->fit);
}

void print_lawn(const struct report *report)
{
	const struct lawns *lawns = &report->takeoff->lawns;

	if (lawns->count == 0)
		return;
	page_heading(report->out, "Lawn");
	print_alike(report, &lawn_table, lawns->list, lawns->count);
	print_note(report, "Topsoil in place by area and depth%s; the order is with what "
		"settles.%s", has_fact(report, FACT(WALLS)) ? ", but over the base of a wall no "
		"deeper than what its embed leaves under the turf" : "",
		has_fact(report, FACT(TURF)) ? " Spare turf is for trimming at the edges." : "");
}
