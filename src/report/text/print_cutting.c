#include "report/text/print.h"
#include "report/words/words.h"
#include "base/memory.h"
#include "base/show.h"

#include <stdlib.h>

/* All places of one length, over the cuts of one size of block. */
struct tally {
	nm place;
	int64_t count;
};

static int longest_first(const void *a, const void *b)
{
	nm one = ((const struct tally *)a)->place, other = ((const struct tally *)b)->place;

	return (one < other) - (one > other);
}

/* The places of all cuts, longest first, equal ones together. The caller frees. */
static struct tally *tally_places(const struct cutting *cutting, size_t *count)
{
	struct tally *tallies = NULL;
	size_t capacity = 0, all = 0;

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int j = 0; j < cut->piece_count; j++) {
			tallies = memory_grow(tallies, all, &capacity, sizeof *tallies);
			tallies[all++] = (struct tally){ cut->pieces[j], cut->blocks };
		}
	}
	if (all > 1)
		qsort(tallies, all, sizeof *tallies, longest_first);
	*count = 0;
	for (size_t i = 0; i < all; i++) {
		if (*count > 0 && tallies[*count - 1].place == tallies[i].place)
			tallies[*count - 1].count += tallies[i].count;
		else
			tallies[(*count)++] = tallies[i];
	}
	return tallies;
}

static void print_pieces(const struct report *report, const struct cutting *cutting)
{
	static const struct table_column columns[] = {
		{ "Pieces", COLUMN_RIGHT }, { "Place", COLUMN_RIGHT }, { "Saw to", COLUMN_RIGHT },
	};
	struct table table = table_start(columns, 3, 2);
	size_t count;
	struct tally *tallies = tally_places(cutting, &count);

	for (size_t i = 0; i < count; i++) {
		show_count(table_cell(&table), tallies[i].count);
		show_inches(table_cell(&table), tallies[i].place, report->units);
		show_inches(table_cell(&table), word_saw_length(tallies[i].place, cutting->fit),
			report->units);
	}
	free(tallies);
	table_print(&table, report->out);
}

static void print_cuts(const struct report *report, const struct cutting *cutting)
{
	static const struct table_column columns[] = {
		{ "Blocks", COLUMN_RIGHT }, { "Saw each into", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 2, 2);

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		show_count(table_cell(&table), cut->blocks);
		word_cut(table_cell(&table), report, cut, cutting->fit);
	}
	text_add(report->out, "\n");
	table_print(&table, report->out);
}

static void print_counts(const struct report *report, const struct cutting *cutting)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "Bought ");
	word_count(&line, cutting->bought, "block", "blocks");
	text_add(&line, ": ");
	word_count(&line, cutting->whole, "whole", "whole");
	text_add(&line, ", ");
	word_count(&line, cutting->cut_blocks, "cut up", "cut up");
	text_add(&line, "; no cut list could do with fewer than ");
	show_count(&line, cutting->floor);
	text_add(&line, ". Spare for breakage: ");
	show_count(&line, cutting->breakage);
	text_add(&line, ". Without spares they weigh ");
	show_weight(&line, cutting->weight, report->units);
	text_add(&line, ".");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_saw(const struct report *report, const struct cutting *cutting)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "Each piece is sawn ");
	word_inches(&line, report, cutting->fit);
	text_add(&line, " shorter than its place; a saw cut takes ");
	word_inches(&line, report, cutting->kerf);
	text_add(&line, ".");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_size(const struct report *report, const struct cutting *cutting)
{
	struct text title = TEXT_EMPTY;

	text_print(&title, "%s block ", cutting->use == USE_CAP ? "Cap" : "Wall");
	word_size(&title, report, &cutting->block);
	page_paragraph(report->out, 0, 2, title.bytes);
	text_fini(&title);
	print_counts(report, cutting);
	if (cutting->cut_count == 0) {
		page_paragraph(report->out, 2, 2, "None is cut.");
		return;
	}
	print_saw(report, cutting);
	print_pieces(report, cutting);
	print_cuts(report, cutting);
}

void print_cutting(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	int cuts = 0;

	if (takeoff->cutting_count == 0)
		return;
	page_heading(report->out, takeoff->complete ? "Cutting" : "Cutting (INCOMPLETE)");
	for (int i = 0; i < takeoff->cutting_count; i++)
		cuts += takeoff->cuttings[i].cut_count > 0;
	if (cuts > 0)
		page_paragraph(report->out, 0, 0, "Sawing block makes silica dust: wet cutting or "
			"extraction and a respirator (29 CFR 1926.1153, Table 1, or your local rule). "
			"Guard eyes and hearing, mind kickback, keep bystanders off.");
	for (int i = 0; i < takeoff->cutting_count; i++) {
		text_add(report->out, i > 0 || cuts > 0 ? "\n" : "");
		print_size(report, &takeoff->cuttings[i]);
	}
}
