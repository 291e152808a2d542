#include "takeoff/fabric.h"
#include "takeoff/item_rows.h"
#include "takeoff/snags.h"

#include <stdlib.h>
#include <string.h>

/* Cuts pieces and counts pins as the strips are told of. */
struct cutter {
	struct strips_sink sink; /* first */
	struct fabric fabric;
	nm offcut, apart; /* kept on a roll; pins */
	nm left;          /* on the roll that is begun */
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

static void take_piece(struct strips_sink *sink, const struct cover_box *piece)
{
	struct cutter *cutter = (struct cutter *)sink;
	bool is_upright = cutter->fabric.way.is_upright;

	cut_piece(cutter, is_upright ? piece->bottom - piece->top : piece->right - piece->left);
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

static struct fabric try_way(const struct block *allow, const struct strips *strips,
	struct strips_way way)
{
	struct cutter cutter = { .sink = { take_piece, take_edge },
		.offcut = block_length(allow, ALLOW_FABRIC_OFFCUT),
		.apart = block_length(allow, ALLOW_FABRIC_PINS),
		.fabric = { .way = way, .width = strips->width, .lap = strips->lap,
			.roll = block_length(allow, ALLOW_FABRIC_LENGTH),
			.end_lap = block_length(allow, ALLOW_FABRIC_END_LAP) } };

	strips_lay(strips, way, &cutter.sink);
	cutter.fabric.pins += cutter.fabric.joins * (ceiling(strips->width, cutter.apart) + 1);
	return cutter.fabric;
}

static bool is_less(const struct fabric *a, const struct fabric *b)
{
	return a->rolls != b->rolls ? a->rolls < b->rolls : a->used < b->used;
}

static struct fabric best_way(const struct block *allow, const struct strips *strips)
{
	struct fabric best = try_way(allow, strips, (struct strips_way){ false, false });

	for (int i = 1; i < 4; i++) {
		struct fabric other = try_way(allow, strips, (struct strips_way){ i / 2, i % 2 });

		if (is_less(&other, &best))
			best = other;
	}
	return best;
}

/* ---- Pieces by length -------------------------------------------------------------------------- */

struct tally {
	struct strips_sink sink; /* first */
	bool is_upright;
	struct fabric_row *rows;
	size_t count, capacity;
};

/* Pieces alike often follow each other. */
static void tally_piece(struct strips_sink *sink, const struct cover_box *piece)
{
	struct tally *tally = (struct tally *)sink;
	nm length = tally->is_upright ? piece->bottom - piece->top : piece->right - piece->left;

	if (tally->count == 0 || tally->rows[tally->count - 1].length != length) {
		tally->rows = memory_grow(tally->rows, tally->count, &tally->capacity,
			sizeof *tally->rows);
		tally->rows[tally->count++] = (struct fabric_row){ length, 0 };
	}
	tally->rows[tally->count - 1].pieces++;
}

static void tally_edge(struct strips_sink *sink, nm length)
{
	(void)sink;
	(void)length;
}

static int longest_first(const void *a, const void *b)
{
	const struct fabric_row *one = a, *other = b;

	return (one->length < other->length) - (one->length > other->length);
}

static void tally_pieces(struct fabric *fabric, struct arena *arena, const struct strips *strips)
{
	struct tally tally = { .sink = { tally_piece, tally_edge },
		.is_upright = fabric->way.is_upright };
	struct fabric_row *rows;
	size_t joined = 0;

	strips_lay(strips, fabric->way, &tally.sink);
	qsort(tally.rows, tally.count, sizeof *tally.rows, longest_first);
	for (size_t i = 0; i < tally.count; i++) {
		if (joined > 0 && tally.rows[joined - 1].length == tally.rows[i].length)
			tally.rows[joined - 1].pieces += tally.rows[i].pieces;
		else
			tally.rows[joined++] = tally.rows[i];
	}
	rows = arena_new(arena, joined, sizeof *rows);
	memcpy(rows, tally.rows, joined * sizeof *rows);
	fabric->rows = rows;
	fabric->row_count = (int)joined;
	free(tally.rows);
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
	nm2 area = 0;

	for (size_t i = 0; i < cover->count; i++) {
		const struct cover_box *box = &cover->pieces[i];

		if (!has_fabric(takeoff, &takeoff->zones.list[box->owner]))
			continue;
		boxes[strips.count++] = *box;
		area += cover_box_area(box);
	}
	strips.lap = smaller(block_length(allow, ALLOW_FABRIC_LAP), strips.width / 2);
	takeoff->fabric = best_way(allow, &strips);
	takeoff->fabric.area = cover_m2(area);
	if (strips.count > 0)
		tally_pieces(&takeoff->fabric, arena, &strips);
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
