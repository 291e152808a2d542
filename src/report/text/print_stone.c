#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

#include <limits.h>

/* The layers of one entry of the legend. */
enum { LAYER_BASE, LAYER_SURFACE, LAYER_WALL, LAYER_INSIDE, LAYER_PAD, LAYERS };

struct layer {
	double area, compacted;
	const struct stone *first; /* NULL: none */
};

static int layer_of(const struct stone *stone)
{
	static const int bases[] = {
		[STONE_PATH] = LAYER_BASE, [STONE_WALL] = LAYER_WALL, [STONE_INSIDE] = LAYER_INSIDE,
		[STONE_PAD] = LAYER_PAD,
	};

	return stone->layer == STONE_SURFACE ? LAYER_SURFACE : bases[stone->place];
}

static const char *layer_words(const struct stone *stone)
{
	static const char *const words[] = {
		[LAYER_BASE] = "base", [LAYER_WALL] = "base of walls", [LAYER_INSIDE] = "base inside",
		[LAYER_PAD] = "pads",
	};

	if (stone->layer == STONE_SURFACE)
		return stone->grading == STONE_CLEAN ? "surface, clean" : "surface, fines";
	return words[layer_of(stone)];
}

static void layer_row(struct table *table, const struct report *report, const struct layer *layer)
{
	const struct stone *stone = layer->first;
	const struct entry *entry = report->takeoff->survey.regions[stone->region].entry;

	text_print(table_cell(table), "%c %s", entry->letter, entry->name);
	table_words(table, layer_words(stone));
	show_area(table_cell(table), layer->area, report->units);
	show_inches(table_cell(table), stone->depth, report->units);
	show_volume(table_cell(table), layer->compacted, report->units);
	if (stone->layer == STONE_BASE)
		show_count(table_cell(table), stone->lifts);
	else
		table_words(table, "-");
}

static void print_layers(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Of", COLUMN_WRAPS }, { "Layer", COLUMN_LEFT }, { "Area", COLUMN_RIGHT },
		{ "Depth", COLUMN_RIGHT }, { "Compacted", COLUMN_RIGHT }, { "Lifts", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 6, 0);
	struct layer layers[UCHAR_MAX + 1][LAYERS] = { { { 0, 0, NULL } } };

	for (int i = 0; i < takeoff->stone_count; i++) {
		const struct stone *stone = &takeoff->stones[i];
		char letter = takeoff->survey.regions[stone->region].entry->letter;
		struct layer *layer = &layers[(unsigned char)letter][layer_of(stone)];

		layer->area += stone->area;
		layer->compacted += stone->compacted;
		layer->first = stone;
	}
	for (int i = 0; i < takeoff->area_count; i++) {
		const struct entry *entry = takeoff->areas[i].entry;

		for (int j = 0; entry && j < LAYERS; j++)
			if (layers[(unsigned char)entry->letter][j].first)
				layer_row(&table, report, &layers[(unsigned char)entry->letter][j]);
	}
	table_print(&table, report->out);
}

static void print_totals(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "In all", COLUMN_LEFT }, { "Compacted", COLUMN_RIGHT }, { "Order", COLUMN_RIGHT },
		{ "Weight", COLUMN_RIGHT }, { "Barrows", COLUMN_RIGHT },
		{ "Trucks", COLUMN_RIGHT },
	};
	static const char *const names[] = { "Bases, pads", "Surface, fines", "Surface, clean" };
	struct table table = table_start(columns, 6, 0);

	for (int kind = 0; kind < STONE_KINDS; kind++) {
		const struct stone_total *total = &report->takeoff->stone_totals[kind];

		if (total->order <= 0)
			continue;
		table_words(&table, names[kind]);
		show_volume(table_cell(&table), total->compacted, report->units);
		show_volume(table_cell(&table), total->order, report->units);
		show_weight(table_cell(&table), total->weight, report->units);
		show_count(table_cell(&table), total->loads.barrow);
		show_count(table_cell(&table), total->loads.truck);
	}
	text_add(report->out, "\n");
	table_print(&table, report->out);
}

/* ---- Fabric ----------------------------------------------------------------------------------- */

static const char *way_words(struct strips_way way)
{
	static const char *const words[2][2] = {
		{ "level strips, left to right, the first along the top edge of it",
			"level strips, left to right, the first along the bottom edge of it" },
		{ "upright strips, top to bottom, the first along the left edge of it",
			"upright strips, top to bottom, the first along the right edge of it" },
	};

	return words[way.is_upright][way.is_turned];
}

/* "Fabric 6 ft wide, rolls of 100 ft, over 48 sq ft: level strips, ... of the plan." */
static void print_way(const struct report *report, const struct fabric *fabric)
{
	struct text line = TEXT_EMPTY;
	size_t from;

	text_add(&line, "Fabric ");
	word_length(&line, report, fabric->width);
	text_add(&line, " wide in rolls of ");
	word_length(&line, report, fabric->roll);
	text_add(&line, ", under ");
	from = line.length;
	show_area(&line, fabric->area, report->units);
	page_tie(&line, from);
	text_print(&line, " of path and base: %s, each next one ", way_words(fabric->way));
	word_inches(&line, report, fabric->lap);
	text_add(&line, " over the one before. Cut away "
		"what lies over other ground.");
	page_paragraph(report->out, 0, 2, line.bytes);
	text_fini(&line);
}

static void print_rolls(const struct report *report, const struct fabric *fabric)
{
	struct text line = TEXT_EMPTY;

	word_count(&line, fabric->rolls, "roll", "rolls");
	text_add(&line, ", of which ");
	word_length(&line, report, fabric->used);
	text_print(&line, " %s used. ", fabric->rolls == 1 ? "is" : "are");
	if (fabric->joins > 0) {
		text_add(&line, "Where a roll ends within a piece the next goes on, ");
		word_inches(&line, report, fabric->end_lap);
		text_add(&line, " over it: ");
		word_count(&line, fabric->joins, "time", "times");
		text_add(&line, ". ");
	}
	word_count(&line, fabric->pins, "pin", "pins");
	text_add(&line, ": along edges, side laps, ends and end laps, at the corners and no farther "
		"than ");
	word_inches(&line, report, block_length(report->takeoff->allow, ALLOW_FABRIC_PINS));
	text_add(&line, " apart.");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_fabric(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Pieces", COLUMN_RIGHT }, { "Long", COLUMN_RIGHT },
	};
	const struct fabric *fabric = &report->takeoff->fabric;
	struct table table = table_start(columns, 2, 2);

	if (fabric->rolls == 0)
		return;
	text_add(report->out, "\n");
	print_way(report, fabric);
	for (int i = 0; i < fabric->row_count; i++) {
		show_count(table_cell(&table), fabric->rows[i].pieces);
		show_length(table_cell(&table), fabric->rows[i].length, report->units);
	}
	table_print(&table, report->out);
	print_rolls(report, fabric);
}

/* ---- Liner ------------------------------------------------------------------------------------ */

static int compare_liners(const void *a, const void *b, const void *takeoff)
{
	const struct liner *one = a, *other = b;

	(void)takeoff;
	if (one->length != other->length)
		return one->length < other->length ? -1 : 1;
	return (one->height > other->height) - (one->height < other->height);
}

static void print_liners(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "Liners", COLUMN_RIGHT }, { "Length", COLUMN_RIGHT }, { "Height", COLUMN_RIGHT },
		{ "Area each", COLUMN_RIGHT },
	};
	const struct takeoff *takeoff = report->takeoff;
	struct table table = table_start(columns, 4, 0);
	struct groups groups;

	if (takeoff->liner_count == 0)
		return;
	groups = groups_make(takeoff->liners, takeoff->liner_count, sizeof *takeoff->liners,
		compare_liners, NULL);
	for (int i = 0; i < groups.count; i++) {
		const struct liner *liner = &takeoff->liners[groups.list[i].members[0]];

		show_count(table_cell(&table), groups.list[i].count);
		show_length(table_cell(&table), liner->length, report->units);
		show_inches(table_cell(&table), liner->height, report->units);
		show_area(table_cell(&table), liner->area, report->units);
	}
	groups_fini(&groups);
	text_add(report->out, "\n");
	table_print(&table, report->out);
}

void print_stone(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (takeoff->stone_count == 0 && takeoff->liner_count == 0 && takeoff->fabric.rolls == 0)
		return;
	page_heading(report->out, "Stone and fabric");
	if (takeoff->stone_count > 0) {
		page_paragraph(report->out, 0, 0, "Compacting: guard feet and hearing, two people lift "
			"the machine, never near marked services.");
		print_layers(report);
		print_totals(report);
	}
	print_fabric(report);
	print_liners(report);
	page_note(report->out, "Depths and volumes compacted; stone is ordered loose, with what is "
		"spare. A lift is the layer that is spread and tamped at one time, 4 in at most, 2 in "
		"with a hand tamper. Liner: round the inside of the walls, soil depth and what is turned under.");
}
