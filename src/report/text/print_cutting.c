#include "report/text/print.h"
#include "report/text/sawn_places.h"

/* Sizes of sawn pieces as rows. */
struct size_rows {
	struct table table; /* first */
	const struct report *report;
	const struct sawn *sawn;
	const struct text *places; /* by size */
	int at; /* the next */
};

static bool next_size(struct table *table, const char *cells[])
{
	struct size_rows *rows = (struct size_rows *)table;
	const struct report *report = rows->report;
	const struct batch *size = &rows->sawn->sizes[rows->at];

	arena_clear(report->words);
	if (rows->at == rows->sawn->count) {
		rows->at = 0;
		return false;
	}
	cells[0] = say(report, "%c", sawn_letter(rows->at));
	cells[1] = plain_count(report, size->count);
	cells[2] = plain_piece(report, size->place);
	cells[3] = plain_inches(report, saw_length(report, size->place,
		rows->sawn->cutting->gap));
	cells[4] = rows->places[rows->at++].bytes;
	return true;
}

static void print_pieces(const struct report *report, const struct cutting *cutting)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_LEFT }, { "Pieces", COLUMN_RIGHT }, { "Place", COLUMN_RIGHT },
		{ "Saw to", COLUMN_RIGHT }, { "Goes to", COLUMN_WRAPS },
	};
	struct sawn sawn = sawn_make(cutting);
	struct text *places = sawn_places(report, &sawn);
	struct size_rows rows = { .table = { columns, 5, 2, next_size, 0 }, .report = report,
		.sawn = &sawn, .places = places };

	table_print(&rows.table, report->out);
	sawn_places_free(places, &sawn);
	sawn_fini(&sawn);
}

/* Whether it is sawn as those that are cut up before it, which say how: all that are laid without
 * a joint are. */
static bool is_sawn_as_before(const struct cuttings *cuttings, int at)
{
	for (int i = at - 1; i >= 0; i--)
		if (cuttings->list[i].cut_count > 0)
			return cuttings->list[i].joint == 0 && cuttings->list[at].joint == 0;
	return false;
}

/* How many blocks, and what each of them is cut into. */
static void print_cuts(const struct report *report, const struct cutting *cutting)
{
	static const struct table_column columns[] = {
		{ "Blocks", COLUMN_RIGHT }, { "Saw each into", COLUMN_WRAPS },
	};
	struct hand_table table = hand_table(columns, 2, 2);

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		TABLE_ROW(&table, plain_count(report, cut->blocks),
			cut_words(report, cut, cutting->gap));
		arena_clear(report->words);
	}
	hand_table_print(&table, report->out);
}

static void print_size(const struct report *report, int at)
{
	const struct cuttings *cuttings = &report->takeoff->cuttings;
	const struct cutting *cutting = &cuttings->list[at];

	print_lines(report, 0, 2, "%s block %s", cutting->use == USE_CAP ? "Cap" : "Wall",
		word_size(report, &cutting->block));
	print_lines(report, 2, 2, "Bought %s%s; %s. On top, to spare: %s.",
		word_count(report, cutting->bought, "block", "blocks"),
		cutting->cut_count == 0 ? ", none cut up" : say(report, ": %s, %s",
		word_count(report, cutting->whole, "whole", "whole"),
		word_count(report, cutting->cut_blocks, "cut up", "cut up")),
		word_weight(report, cutting->weight), plain_count(report, cutting->breakage));
	if (cutting->cut_count == 0)
		return;
	if (!is_sawn_as_before(cuttings, at))
		print_lines(report, 2, 2, "Each piece is sawn %s shorter than its place; a saw cut "
			"takes %s.%s", word_inches(report, cutting->gap),
			word_inches(report, cutting->kerf),
			cutting->joint == 0 ? "" : say(report, " A block has %s of stone.",
			word_inches(report, cutting->block.along - cutting->joint)));
	print_pieces(report, cutting);
	print_cuts(report, cutting);
}

void print_cutting(const struct report *report)
{
	const struct cuttings *cuttings = &report->takeoff->cuttings;

	if (cuttings->count == 0)
		return;
	print_section(report, "Cutting");
	for (int i = 0; i < cuttings->count; i++) {
		if (i > 0)
			print_blank(report);
		print_size(report, i);
	}
}
