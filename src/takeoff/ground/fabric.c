#include "takeoff/ground/fabric.h"
#include "takeoff/common/item_rows.h"
#include "takeoff/common/snags.h"

#include <stdlib.h>
#include <string.h>

/* Cuts pieces and counts pins as the strips are told of. */
struct cutter {
	struct strips_sink sink; /* first */
	struct fabric fabric;
	nm offcut, apart; /* kept on a roll; pins */
	nm left;          /* on the roll that is begun */
	struct fabric_row *rows; /* pieces in order, those alike that follow each other in one */
	size_t row_count, row_capacity;
};

static int64_t ceiling(nm length, nm by)
{
	return (length + by - 1) / by;
}

/* Whole rolls end to end, each but the last shorter by the lap. left is 0. */
static void cut_fresh(struct cutter *cutter, nm length)
{
	struct fabric *fabric = &cutter->fabric;
	int64_t rolls = length <= fabric->roll ? 1 :
		ceiling(length - fabric->end_lap, fabric->roll - fabric->end_lap);
	nm cut = length + (rolls - 1) * fabric->end_lap;

	fabric->rolls += rolls;
	fabric->joins += rolls - 1;
	fabric->used += cut;
	cutter->left = rolls * fabric->roll - cut;
}

static void cut_piece(struct cutter *cutter, nm length)
{
	struct fabric *fabric = &cutter->fabric;

	if (length <= cutter->left) {
		fabric->used += length;
		cutter->left -= length;
	} else if (cutter->left > fabric->end_lap) {
		fabric->used += cutter->left;
		fabric->joins++;
		cut_fresh(cutter, length - cutter->left + fabric->end_lap);
	} else {
		cut_fresh(cutter, length);
	}
	if (cutter->left < cutter->offcut)
		cutter->left = 0;
}

static void list_piece(struct cutter *cutter, nm length)
{
	if (cutter->row_count == 0 || cutter->rows[cutter->row_count - 1].length != length) {
		cutter->rows = memory_grow(cutter->rows, cutter->row_count, &cutter->row_capacity,
			sizeof *cutter->rows);
		cutter->rows[cutter->row_count++] = (struct fabric_row){ length, 0 };
	}
	cutter->rows[cutter->row_count - 1].pieces++;
}

static void take_piece(struct strips_sink *sink, const struct cover_box *piece)
{
	struct cutter *cutter = (struct cutter *)sink;
	nm length = cutter->fabric.way.is_upright ? piece->bottom - piece->top :
		piece->right - piece->left;

	list_piece(cutter, length);
	cut_piece(cutter, length);
	cutter->fabric.pieces++;
	/* Both ends; the pins at the corners are those of the long edges. */
	cutter->fabric.pins += 2 * (ceiling(cutter->fabric.width, cutter->apart) - 1);
}

static void take_edge(struct strips_sink *sink, nm length)
{
	struct cutter *cutter = (struct cutter *)sink;

	cutter->fabric.pins += ceiling(length, cutter->apart) + 1;
}

static nm smaller(nm a, nm b)
{
	return a < b ? a : b;
}

static void try_way(struct cutter *out, const struct block *allow, const struct strips *strips,
	struct strips_way way)
{
	*out = (struct cutter){ .sink = { take_piece, take_edge },
		.offcut = block_length(allow, ALLOW_FABRIC_OFFCUT),
		.apart = block_length(allow, ALLOW_FABRIC_PINS),
		.fabric = { .way = way, .width = strips->width, .lap = strips->lap,
			.roll = block_length(allow, ALLOW_FABRIC_LENGTH),
			.end_lap = block_length(allow, ALLOW_FABRIC_END_LAP) } };
	strips_lay(strips, way, &out->sink);
	out->fabric.pins += out->fabric.joins * (ceiling(strips->width, out->apart) + 1);
}

static bool is_less(const struct fabric *a, const struct fabric *b)
{
	return a->rolls != b->rolls ? a->rolls < b->rolls : a->used < b->used;
}

/* The caller frees the rows. */
static struct cutter best_way(const struct block *allow, const struct strips *strips)
{
	struct cutter best, other;

	try_way(&best, allow, strips, (struct strips_way){ false, false });
	for (int i = 1; i < 4; i++) {
		struct fabric_row *unused;

		try_way(&other, allow, strips, (struct strips_way){ i / 2, i % 2 });
		unused = other.rows;
		if (is_less(&other.fabric, &best.fabric)) {
			unused = best.rows;
			best = other;
		}
		free(unused);
	}
	return best;
}

static int longest_first(const void *a, const void *b)
{
	const struct fabric_row *one = a, *other = b;

	return (one->length < other->length) - (one->length > other->length);
}

static void list_rows(struct fabric *fabric, struct arena *arena, struct cutter *cutter)
{
	struct fabric_row *rows;
	size_t joined = 0;

	qsort(cutter->rows, cutter->row_count, sizeof *cutter->rows, longest_first);
	for (size_t i = 0; i < cutter->row_count; i++) {
		if (joined > 0 && cutter->rows[joined - 1].length == cutter->rows[i].length)
			cutter->rows[joined - 1].pieces += cutter->rows[i].pieces;
		else
			cutter->rows[joined++] = cutter->rows[i];
	}
	rows = arena_new(arena, joined, sizeof *rows);
	memcpy(rows, cutter->rows, joined * sizeof *rows);
	fabric->rows = rows;
	fabric->row_count = (int)joined;
}

/* ---- The ground -------------------------------------------------------------------------------- */

static bool has_fabric(const struct takeoff *takeoff, const struct zone *zone)
{
	const struct block *block = &takeoff->survey.regions[zone->region].entry->block;

	switch (zone->part) {
	case ZONE_PATH:
		return block_number(block, PATH_FABRIC) == CHOICE_YES;
	case ZONE_WALL:
		return block_length(block, BED_BASE) > 0;
	case ZONE_INSIDE:
		return block_number(block, BED_INSIDE) == INSIDE_BASE &&
			block_length(block, BED_BASE) > 0;
	case ZONE_PAD:
		return block_length(block, FIXTURE_BASE) > 0;
	case ZONE_LAWN:
	case ZONE_BED:
		return false;
	}
	return false;
}

void fabric_compute(struct takeoff *takeoff, struct arena *arena)
{
	const struct cover *cover = &takeoff->zones.cover;
	const struct block *allow = takeoff->allow;
	struct cover_box *boxes = memory_new(cover->count + 1, sizeof *boxes);
	struct strips strips = { .boxes = boxes, .width = block_length(allow, ALLOW_FABRIC_WIDTH) };
	struct cutter best;
	nm2 area = 0;

	for (size_t i = 0; i < cover->count; i++) {
		const struct cover_box *box = &cover->pieces[i];

		if (!has_fabric(takeoff, &takeoff->zones.list[box->owner]))
			continue;
		boxes[strips.count++] = *box;
		area += cover_box_area(box);
	}
	strips.lap = smaller(block_length(allow, ALLOW_FABRIC_LAP), strips.width / 2);
	best = best_way(allow, &strips);
	takeoff->fabric = best.fabric;
	takeoff->fabric.area = cover_m2(area);
	if (best.row_count > 0)
		list_rows(&takeoff->fabric, arena, &best);
	free(best.rows);
	free(boxes);
}

void fabric_items(struct items *items, const struct takeoff *takeoff, const struct plot *plot)
{
	const struct fabric *fabric = &takeoff->fabric;
	double pins = (double)fabric->pins;

	if (fabric->rolls == 0)
		return;
	item_add(items, &(struct item){ .id = "fabric.roll", .section = SECTION_STONE,
		.label = "Fabric, roll", .unit = UNIT_EACH,
		.laid = (double)fabric->used / (double)fabric->roll, .order = (double)fabric->rolls,
		.note = arena_print(items->arena, "whole; %s x %s",
			snag_length(items->arena, plot, fabric->width),
			snag_length(items->arena, plot, fabric->roll)) });
	item_add(items, &(struct item){ .id = "fabric.pin", .section = SECTION_STONE,
		.label = "Fabric pin", .unit = UNIT_EACH, .laid = pins, .order = pins });
}
