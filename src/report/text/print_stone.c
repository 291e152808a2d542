#include "report/text/print.h"

/* "2 of 11 ft 8 in x 18 1/2 in": lengths and heights. */
static const char *liner_cuts_words(const struct report *report, const struct liners *liners)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < liners->cut_count; i++)
		text_print(&words, "%s%s", i ? ", " : "", tied(report, say(report, "%s of %s x %s",
			plain_count(report, liners->cuts[i].pieces),
			plain_length(report, liners->cuts[i].length),
			plain_inches(report, liners->cuts[i].height))));
	return say_text(report, &words);
}

void print_liner(const struct report *report)
{
	const struct liners *liners = &report->takeoff->liners;
	const char *joins = "";

	if (liners->rolls == 0)
		return;
	print_lines(report, 0, 2, "Liner, a permeable filter fabric, inside the walls, as high as "
		"the soil%s:", report->is_whole ? "" : " and what is turned under it");
	print_alike(report, &liner_table, liners->list, liners->count);
	if (liners->joins > 0)
		joins = say(report, ", and with the same where one goes on with another or lies "
			"above it: %s", word_count(report, liners->joins, "time", "times"));
	print_lines(report, 0, 2, "%s of %s x %s, of which %s %s used: %s. Cut %s; strips close "
		"with a lap of %s%s.", word_count(report, liners->rolls, "roll", "rolls"),
		word_length(report, liners->width), word_length(report, liners->roll),
		plain_decimal(report, liners->used, 2), liners->used <= 1 ? "is" : "are",
		word_heading(&liner_way_words[liners->way]), liner_cuts_words(report, liners),
		word_inches(report, liners->lap), joins);
}

void print_stone(const struct report *report)
{
	const struct stones *stones = &report->takeoff->stones;

	if (stones->count == 0)
		return;
	print_blank(report);
	print_rows(report, &stone_layer_table, stones->layers, stones->layer_count, 0, NULL);
	print_explained(report, "Depths and volumes compacted: loose there is more.%s%s%s",
		stones->totals[STONE_KIND_FINES].compacted <= 0 ? "" :
		" Fines: with its dust, which packs it hard.",
		stones->totals[STONE_KIND_CLEAN].compacted <= 0 ? "" :
		" Clean: washed of its dust.",
		stones->totals[STONE_KIND_BASE].compacted <= 0 ? "" : say(report, " Layers are "
		"spread and tamped one at a time, each %s thick at most, %s by hand.",
		plain_length(report, stone_layer_most(TAMPER_PLATE, report->units)),
		plain_length(report, stone_layer_most(TAMPER_HAND, report->units))));
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
static const char *edged_words(const struct report *report)
{
	bool has_paths = has_choice(report, CLASS_PATH, PATH_EDGING, CHOICE_YES);
	bool has_level = has_choice(report, CLASS_BED, BED_BUILD, BUILD_LEVEL);
	const char *along = has_paths && has_level ? "paths and ground-level beds" :
		has_paths ? "paths" : "ground-level beds";
	const char *holders[] = {
		has_fact(report, FACT(WALLS)) ? "a raised bed's wall" : NULL,
		has_fact(report, FACT(FIXTURES)) ? "a fixture" : NULL,
		block_number(report->takeoff->allow, ALLOW_HELD) ? "a held side of the plan" : NULL,
		has_paths ? "another path" : NULL,
	};
	struct text words = TEXT_EMPTY;

	text_print(&words, "along %s", along);
	for (size_t i = 0, said = 0; i < sizeof holders / sizeof *holders; i++)
		if (holders[i])
			text_print(&words, "%s%s", said++ ? " or " : ", not where there is ",
				holders[i]);
	return say_text(report, &words);
}

/* "2 of 6 ft, 4 spikes each; 1 of 20 ft: 2 pieces and 48 in, 11 spikes". */
static const char *runs_words(const struct report *report, const struct edging *edging)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < edging->row_count; i++) {
		const struct edging_row *row = &edging->rows[i];

		text_print(&words, "%s%s", i ? "; " : "", tied(report, say(report, "%s of %s",
			plain_count(report, row->runs), plain_length(report, row->length))));
		if (row->whole > 0)
			text_print(&words, ": %s%s%s",
				word_count(report, row->whole, "piece", "pieces"),
				row->rest > 0 ? " and " : "",
				row->rest > 0 ? word_inches(report, row->rest) : "");
		text_print(&words, ", %s%s", word_count(report, row->spikes, "spike", "spikes"),
			row->runs > 1 ? " each" : "");
	}
	return say_text(report, &words);
}

/* ", 1 laid whole, 3 cut up, each sawn ...: 1 into 2 of 5 in". */
static const char *edging_sawn_words(const struct report *report, const struct edging *edging)
{
	if (edging->cut_count == 0)
		return ", none cut up";
	return say(report, ", %s%s cut up, each sawn %s shorter than its place, a saw cut taking "
		"%s: %s", edging->whole == 0 ? "" :
		say(report, "%s laid whole, ", plain_count(report, edging->whole)),
		edging->whole == 0 ? "all" : plain_count(report, edging->cut_up),
		word_inches(report, edging->fit),
		word_inches(report, edging->kerf),
		cuts_words(report, edging->cuts, edging->cut_count, edging->fit));
}

void print_edging(const struct report *report)
{
	const struct edging *edging = &report->takeoff->edging;

	if (edging->runs == 0)
		return;
	print_note(report, "Edging %s: %s in %s: %s. %s: at the ends of a run and no more than %s "
		"apart.",
		edged_words(report), word_length(report, edging->length),
		word_count(report, edging->runs, "run", "runs"), runs_words(report, edging),
		word_count(report, edging->spikes, "spike", "spikes"),
		word_inches(report, edging->spacing));
	print_lines(report, 0, 0, "%s of %s%s.", word_count(report, edging->bought, "piece",
		"pieces"), word_length(report, edging->piece), edging_sawn_words(report, edging));
}

void print_lawn(const struct report *report)
{
	const struct lawns *lawns = &report->takeoff->lawns;

	if (lawns->count == 0)
		return;
	print_alike(report, &lawn_table, lawns->list, lawns->count);
	print_ordered(report, SECTION_LAWN);
	print_explained(report, "Topsoil in place by area and depth%s; the order is with what "
		"settles.", has_fact(report, FACT(WALLS)) ? ", but over the base of a wall only "
		"what fits under the turf" : "");
}
