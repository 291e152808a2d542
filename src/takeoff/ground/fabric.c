#include "takeoff/ground/fabric.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* Cuts pieces and counts pins as the strips are laid. */
struct cutter {
	struct strips_sink sink; /* first */
	struct fabric fabric;
	nm offcut, apart; /* least worth keeping; between pins */
	nm left;          /* on the open roll */
	struct batch *rows; /* pieces in order, equal neighbours joined */
	size_t row_count, row_capacity;
};

/* Cuts from new rolls end to end, joined with end laps. `left` is 0. */
static void cut_fresh(struct cutter *cutter, nm length)
{
	struct fabric *fabric = &cutter->fabric;
	int64_t rolls = length <= fabric->roll ? 1 :
		quotient_up(length - fabric->end_lap, fabric->roll - fabric->end_lap);
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
	if (cutter->row_count == 0 || cutter->rows[cutter->row_count - 1].place != length) {
		cutter->rows = memory_grow(cutter->rows, cutter->row_count, &cutter->row_capacity,
			sizeof *cutter->rows);
		cutter->rows[cutter->row_count++] = (struct batch){ length, 0 };
	}
	cutter->rows[cutter->row_count - 1].count++;
}

static bool is_upright(const struct fabric *fabric)
{
	return fabric->way == FABRIC_FROM_LEFT || fabric->way == FABRIC_FROM_RIGHT;
}

static void take_piece(struct strips_sink *sink, const struct cover_box *piece)
{
	struct cutter *cutter = (struct cutter *)sink;
	nm length = is_upright(&cutter->fabric) ? piece->bottom - piece->top :
		piece->right - piece->left;

	list_piece(cutter, length);
	cut_piece(cutter, length);
	cutter->fabric.pieces++;
	/* At both ends; the pins at the corners count with the long edges. */
	cutter->fabric.pins += 2 * (quotient_up(cutter->fabric.width, cutter->apart) - 1);
}

static void take_edge(struct strips_sink *sink, nm length)
{
	struct cutter *cutter = (struct cutter *)sink;

	cutter->fabric.pins += quotient_up(length, cutter->apart) + 1;
}

static void try_way(struct cutter *out, const struct block *allow, const struct strips *strips,
	enum fabric_way way)
{
	*out = (struct cutter){ .sink = { take_piece, take_edge },
		.offcut = block_length(allow, ALLOW_FABRIC_OFFCUT),
		.apart = block_length(allow, ALLOW_FABRIC_PINS),
		.fabric = { .way = way, .width = strips->width, .lap = strips->lap,
			.roll = block_length(allow, ALLOW_FABRIC_LENGTH),
			.end_lap = block_length(allow, ALLOW_FABRIC_END_LAP) } };
	strips_lay(strips, (struct strips_way){ is_upright(&out->fabric),
		way == FABRIC_FROM_BOTTOM || way == FABRIC_FROM_RIGHT }, &out->sink);
	out->fabric.pins += out->fabric.joins * (quotient_up(strips->width, out->apart) + 1);
}

static bool is_less(const struct fabric *a, const struct fabric *b)
{
	return a->rolls != b->rolls ? a->rolls < b->rolls : a->used < b->used;
}

/* The caller frees the rows. */
static struct cutter best_way(const struct block *allow, const struct strips *strips)
{
	struct cutter best, other;

	try_way(&best, allow, strips, FABRIC_FROM_TOP);
	for (int way = FABRIC_FROM_BOTTOM; way <= FABRIC_FROM_RIGHT; way++) {
		struct batch *unused;

		try_way(&other, allow, strips, (enum fabric_way)way);
		unused = other.rows;
		if (is_less(&other.fabric, &best.fabric)) {
			unused = best.rows;
			best = other;
		}
		free(unused);
	}
	return best;
}

static void list_rows(struct fabric *fabric, struct arena *arena, struct cutter *cutter)
{
	size_t count = batches_join(cutter->rows, cutter->row_count);
	struct fabric_row *rows = arena_new(arena, count, sizeof *rows);

	for (size_t i = 0; i < count && !stop_asked(); i++)
		rows[i] = (struct fabric_row){ cutter->rows[i].place, cutter->rows[i].count };
	fabric->rows = rows;
	fabric->row_count = (int)count;
}

/* ---- The ground ------------------------------------------------------------------------------ */

bool fabric_is_under(const struct survey *survey, const struct zone *zone)
{
	return zone->part != DIG_PATH ? zone_base(survey, zone) > 0 : block_number(
		&survey->regions[zone->region].entry->block, PATH_FABRIC) == CHOICE_YES;
}

void fabric_compute(struct fabric *out, const struct basis *basis, const struct zones *zones,
	const struct zones_ground *ground)
{
	const struct cover *cover = &ground->cover;
	const struct block *allow = basis->allow;
	struct cover_box *boxes = memory_new(cover->count, sizeof *boxes);
	struct strips strips = { .boxes = boxes, .width = block_length(allow, ALLOW_FABRIC_WIDTH),
		.bridge = block_length(allow, ALLOW_FABRIC_OFFCUT) };
	struct cutter best;
	nm2 area = 0;

	for (size_t i = 0; i < cover->count && !stop_asked(); i++) {
		const struct cover_box *box = &cover->pieces[i];

		if (!fabric_is_under(basis->survey, &zones->list[box->owner]))
			continue;
		boxes[strips.count++] = *box;
		area += cover_box_area(box);
	}
	strips.lap = nm_least(block_length(allow, ALLOW_FABRIC_LAP), strips.width / 2);
	best = best_way(allow, &strips);
	*out = best.fabric;
	out->area = cover_m2(area);
	*(is_upright(out) ? &out->upright_pieces : &out->level_pieces) = out->pieces;
	list_rows(out, basis->arena, &best);
	free(best.rows);
	free(boxes);
}

void fabric_items(struct item_list *items, const struct fabric *fabric)
{
	if (fabric->rolls == 0)
		return;
	item_add(items, &(struct item){ .good = GOOD_FABRIC, .section = SECTION_STONE,
		.laid = (double)fabric->used / (double)fabric->roll, .order = (double)fabric->rolls,
		.note = { .kind = NOTE_ROLL, .lengths = { fabric->width, fabric->roll } } });
	item_add_bare(items, GOOD_FABRIC_PIN, SECTION_STONE, (double)fabric->pins);
}

static const struct word strips_words[] = {
	[FABRIC_FROM_TOP] = { .key = "level" }, [FABRIC_FROM_BOTTOM] = { .key = "level" },
	[FABRIC_FROM_LEFT] = { .key = "upright" }, [FABRIC_FROM_RIGHT] = { .key = "upright" },
};
const struct word fabric_way_words[] = {
	[FABRIC_FROM_TOP] = { .key = "top",
		.heading = "strips from left to right, the first along the top edge of it" },
	[FABRIC_FROM_BOTTOM] = { .key = "bottom",
		.heading = "strips from left to right, the first along the bottom edge of it" },
	[FABRIC_FROM_LEFT] = { .key = "left",
		.heading = "strips from top to bottom, the first along the left edge of it" },
	[FABRIC_FROM_RIGHT] = { .key = "right",
		.heading = "strips from top to bottom, the first along the right edge of it" },
};
static const struct figure row_figures[] = {
	{ "pieces", "Pieces", NULL, FIELD(COUNT, fabric_row, pieces) },
	{ "length_m", "Long", NULL, FIELD(LENGTH, fabric_row, length), .flags = ROW_KEY },
};
const struct figure_table fabric_row_table = FIGURE_TABLE(fabric_row, row_figures);

static const struct figure figures[] = {
	{ .label = "Fabric", .kind = FIGURE_HEADING },
	{ "strips", NULL, NULL, FIELD(WORD, fabric, way), .words = strips_words },
	{ "from", NULL, NULL, FIELD(WORD, fabric, way), .words = fabric_way_words },
	{ "width_m", NULL, NULL, FIELD(LENGTH, fabric, width) },
	{ "roll_m", NULL, NULL, FIELD(LENGTH, fabric, roll) },
	{ "lap_m", NULL, NULL, FIELD(LENGTH, fabric, lap) },
	{ "end_lap_m", NULL, NULL, FIELD(LENGTH, fabric, end_lap) },
	{ "area_m2", NULL, "Ground covered", FIELD(AREA, fabric, area) },
	{ "cuts", NULL, NULL, FIELDS(ROWS, fabric, rows, row_count), .table = &fabric_row_table },
	{ NULL, NULL, "Pieces, level", FIELD(COUNT, fabric, level_pieces), .flags =
		PANEL_OPTIONAL },
	{ NULL, NULL, "Pieces, upright", FIELD(COUNT, fabric, upright_pieces),
		.flags = PANEL_OPTIONAL },
	{ "rolls", NULL, NULL, FIELD(COUNT, fabric, rolls), .flags = ROW_NEEDED },
	{ "used_m", NULL, "Of the rolls, used", FIELD(LENGTH, fabric, used) },
	{ "joins", NULL, "Joins", FIELD(COUNT, fabric, joins) },
	{ "pins", NULL, NULL, FIELD(COUNT, fabric, pins) },
};
const struct figure_table fabric_table = FIGURE_TABLE(fabric, figures);
