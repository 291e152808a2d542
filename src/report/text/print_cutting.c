#include "report/text/print.h"
#include "base/memory.h"

#include <stdlib.h>

/* The places of all cuts, longest first, equal ones joined. The caller frees. */
static struct batch *places_of(const struct cutting *cutting, size_t *count)
{
	struct batch *places = NULL;
	size_t capacity = 0, all = 0;

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int j = 0; j < cut->piece_count; j++) {
			places = memory_grow(places, all, &capacity, sizeof *places);
			places[all++] = (struct batch){ cut->pieces[j], cut->blocks };
		}
	}
	*count = batches_join(places, all);
	return places;
}

static void print_pieces(const struct report *report, const struct cutting *cutting)
{
	static const struct table_column columns[] = {
		{ "Pieces", COLUMN_RIGHT }, { "Place", COLUMN_RIGHT }, { "Saw to", COLUMN_RIGHT },
	};
	struct hand_table table = hand_table(columns, 3, 2);
	size_t count;
	struct batch *places = places_of(cutting, &count);

	for (size_t i = 0; i < count; i++) {
		TABLE_ROW(&table, plain_count(report, places[i].count),
			plain_piece(report, places[i].place),
			plain_inches(report, saw_length(report, places[i].place, cutting->gap)));
		arena_clear(report->words);
	}
	free(places);
	hand_table_print(&table, report->out);
}

static void print_size(const struct report *report, const struct cutting *cutting)
{
	static const char *const headings[] = { "Blocks", "Saw each into" };

	print_lines(report, 0, 2, "%s block %s", cutting->use == USE_CAP ? "Cap" : "Wall",
		word_size(report, &cutting->block));
	print_lines(report, 2, 2, "Bought %s: %s, %s; the stone laid would fill %s. "
		"Spare for breakage: %s. Without spares they weigh %s.",
		word_count(report, cutting->bought, "block", "blocks"),
		word_count(report, cutting->whole, "whole", "whole"),
		word_count(report, cutting->cut_blocks, "cut up", "cut up"),
		plain_count(report, cutting->floor), plain_count(report, cutting->breakage),
		plain_weight(report, cutting->weight));
	if (cutting->cut_count == 0) {
		print_lines(report, 2, 2, "None is cut.");
		return;
	}
	print_lines(report, 2, 2, "Each piece is sawn %s shorter than its place; a saw cut takes "
		"%s.%s",
		word_inches(report, cutting->gap), word_inches(report, cutting->kerf),
		cutting->joint == 0 ? "" : say(report, " A block has %s of stone.",
		word_inches(report, cutting->block.along - cutting->joint)));
	print_pieces(report, cutting);
	print_blank(report);
	print_cut_table(report, headings, cutting->cuts, cutting->cut_count, cutting->gap);
}

void print_cutting(const struct report *report)
{
	const struct cuttings *cuttings = &report->takeoff->cuttings;

	if (cuttings->count == 0)
		return;
	print_heading(report, "Cutting", report->takeoff->complete);
	for (int i = 0; i < cuttings->count; i++) {
		if (i > 0)
			print_blank(report);
		print_size(report, &cuttings->list[i]);
	}
}
