#include "takeoff/ground/liner.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "survey/outline.h"
#include "takeoff/common/packing.h"

#include <stdlib.h>

/* The pieces while they are gathered. */
struct lining {
	struct liners *out;
	struct liner_cut *cuts;
	size_t count, capacity;
};

/* ---- The pieces ------------------------------------------------------------------------------ */

/* What a roll gives of a length, or of a height: so many times all it has, and a rest. */
struct share {
	int64_t full;
	nm rest;
};

static struct share share_of(nm length, nm roll, nm lap)
{
	int64_t full = length <= roll ? 0 : (length - lap - 1) / (roll - lap);

	return (struct share){ full, length - full * (roll - lap) };
}

static void add_pieces(struct lining *lining, int64_t pieces, nm height, nm length)
{
	if (pieces == 0)
		return;
	lining->cuts = memory_grow(lining->cuts, lining->count, &lining->capacity,
		sizeof *lining->cuts);
	lining->cuts[lining->count++] = (struct liner_cut){ pieces, height, length };
}

/* round: of a loop. */
static void add_strip(struct lining *lining, nm height, nm round)
{
	struct liners *out = lining->out;
	struct share up = share_of(height, out->width, out->lap);
	struct share along = share_of(round + out->lap, out->roll, out->lap);

	add_pieces(lining, up.full * along.full, out->width, out->roll);
	add_pieces(lining, up.full, out->width, along.rest);
	add_pieces(lining, along.full, up.rest, out->roll);
	add_pieces(lining, 1, up.rest, along.rest);
	out->joins += (up.full + 1) * along.full + up.full;
}

/* The inner face of a loop is a wall's depth from it: for each of the four corners that one turns
 * more often than back it is two depths shorter, round a hole longer. */
static void add_loops(struct lining *lining, const struct basis *basis, const struct wall *wall,
	nm height)
{
	const struct survey *survey = basis->survey;
	struct arena outlines = ARENA_EMPTY;
	struct outline outline = { .count = 0 };

	if (region_holes(&survey->regions[wall->region]) == 0)
		add_strip(lining, height, wall->inner_perimeter);
	else
		outline_trace(&outline, &outlines, basis->plot, survey, wall->region);
	for (int i = 0; i < outline.count && !stop_asked(); i++)
		add_strip(lining, height, outline.loops[i].perimeter * survey->cell +
			(i == 0 ? -8 : 8) * wall->block.across);
	arena_clear(&outlines);
}

/* ---- The rolls ------------------------------------------------------------------------------- */

static int by_size(const void *a, const void *b)
{
	const struct liner_cut *one = a, *other = b;
	int order = compare(other->height, one->height);

	return order ? order : compare(other->length, one->length);
}

static void join_cuts(struct lining *lining)
{
	size_t joined = 0;

	sort(lining->cuts, lining->count, sizeof *lining->cuts, by_size);
	for (size_t i = 0; i < lining->count && !stop_asked(); i++) {
		if (joined > 0 && by_size(&lining->cuts[joined - 1], &lining->cuts[i]) == 0)
			lining->cuts[joined - 1].pieces += lining->cuts[i].pieces;
		else
			lining->cuts[joined++] = lining->cuts[i];
	}
	lining->count = joined;
}

/* How many lengths of `whole` give these pieces. */
static int64_t lengths_for(nm whole, struct batch *pieces, size_t count)
{
	struct arena arena = ARENA_EMPTY;
	int64_t lengths = 0;
	int cuts;
	const struct cut *list = packing_cut(&arena, &(struct saw){ .block = whole }, pieces, count,
		&cuts);

	for (int i = 0; i < cuts; i++)
		lengths += list[i].blocks;
	arena_clear(&arena);
	return lengths;
}

/* Each height is slit off as often as its lengths take; rolls are wide enough for some of them. */
static int64_t rolls_slit(const struct lining *lining)
{
	struct batch *lengths = memory_new(lining->count, sizeof *lengths);
	struct batch *slits = memory_new(lining->count, sizeof *slits);
	size_t slit_count = 0;
	int64_t rolls;

	for (size_t from = 0, to = 0; from < lining->count && !stop_asked(); from = to) {
		nm height = lining->cuts[from].height;

		for (; to < lining->count && lining->cuts[to].height == height; to++)
			lengths[to - from] = (struct batch){ lining->cuts[to].length,
				lining->cuts[to].pieces };
		slits[slit_count++] = (struct batch){ height,
			lengths_for(lining->out->roll, lengths, to - from) };
	}
	rolls = lengths_for(lining->out->width, slits, slit_count);
	free(lengths);
	free(slits);
	return rolls;
}

static int by_length(const void *a, const void *b)
{
	const struct liner_cut *one = a, *other = b;
	int order = compare(other->length, one->length);

	return order ? order : compare(other->height, one->height);
}

/* Takes from the pieces, longest first, what lies side by side in a length cut off a roll. Returns
 * how often it can be taken. each: room for as many. */
static int64_t take_length(struct liner_cut *pieces, size_t count, nm width, int64_t *each)
{
	int64_t times = INT64_MAX;

	for (size_t i = 0; i < count; i++) {
		each[i] = nm_least(pieces[i].pieces, width / pieces[i].height);
		width -= each[i] * pieces[i].height;
		if (each[i] > 0)
			times = nm_least(times, pieces[i].pieces / each[i]);
	}
	for (size_t i = 0; i < count; i++)
		pieces[i].pieces -= times * each[i];
	return times;
}

/* Lengths are cut off across, each as long as its longest piece; what follows lies beside it as far
 * as the roll is wide. */
static int64_t rolls_across(const struct lining *lining)
{
	size_t count = lining->count, from = 0, length_count = 0, capacity = 0;
	struct liner_cut *pieces = memory_new(count, sizeof *pieces);
	int64_t *each = memory_new(count, sizeof *each), rolls;
	struct batch *lengths = NULL;

	for (size_t i = 0; i < count; i++)
		pieces[i] = lining->cuts[i];
	sort(pieces, count, sizeof *pieces, by_length);
	while (from < count && !stop_asked()) {
		nm length = pieces[from].length;

		lengths = memory_grow(lengths, length_count, &capacity, sizeof *lengths);
		lengths[length_count++] = (struct batch){ length, take_length(pieces + from,
			count - from, lining->out->width, each) };
		while (from < count && pieces[from].pieces == 0)
			from++;
	}
	rolls = lengths_for(lining->out->roll, lengths, length_count);
	free(lengths);
	free(each);
	free(pieces);
	return rolls;
}

static void cut_rolls(struct lining *lining, struct arena *arena)
{
	struct liners *out = lining->out;
	struct liner_cut *cuts;
	int64_t slit;

	join_cuts(lining);
	slit = rolls_slit(lining);
	out->rolls = rolls_across(lining);
	out->way = slit < out->rolls ? LINER_SLIT : LINER_ACROSS;
	out->rolls = nm_least(slit, out->rolls);
	cuts = arena_new(arena, lining->count, sizeof *cuts);
	for (size_t i = 0; i < lining->count && !stop_asked(); i++) {
		cuts[i] = lining->cuts[i];
		out->used += (double)cuts[i].pieces * area_of(cuts[i].length, cuts[i].height) /
			area_of(out->roll, out->width);
	}
	out->cuts = cuts;
	out->cut_count = (int)lining->count;
	free(lining->cuts);
}

void liner_compute(struct liners *out, const struct basis *basis, const struct walls *walls,
	const struct fills *fills)
{
	const struct block *allow = basis->allow;
	nm turn = block_length(allow, ALLOW_LINER_TURN);
	struct lining lining = { .out = out };
	struct liner *liners = NULL;
	size_t count = 0, capacity = 0;

	*out = (struct liners){ .width = block_length(allow, ALLOW_LINER_WIDTH),
		.roll = block_length(allow, ALLOW_LINER_LENGTH) };
	out->lap = nm_least(block_length(allow, ALLOW_LINER_LAP),
		nm_least(out->width, out->roll) / 2);
	for (int i = 0; i < fills->count && !stop_asked(); i++) {
		const struct fill *fill = &fills->list[i];
		const struct wall *wall = walls_find(walls, fill->region);
		struct liner *liner;

		if (!wall || block_number(wall->bed, BED_LINER) != CHOICE_YES)
			continue;
		liners = arena_grow(basis->arena, liners, count, &capacity, sizeof *liners);
		liner = &liners[count++];
		*liner = (struct liner){ .region = fill->region, .length = wall->inner_perimeter,
			.height = nm_most(fill->soil_depth + fill->strip_depth, fill->deepest) +
				turn };
		liner->area = area_of(liner->length, liner->height);
		add_loops(&lining, basis, wall, liner->height);
	}
	out->list = liners;
	out->count = (int)count;
	cut_rolls(&lining, basis->arena);
}

void liner_items(struct item_list *items, const struct liners *liners)
{
	double roll = area_of(liners->width, liners->roll);

	if (liners->rolls > 0)
		item_add(items, &(struct item){ .good = GOOD_LINER, .section = SECTION_STONE,
			.laid = liners->used * roll,
			.spare = ((double)liners->rolls - liners->used) * roll,
			.order = (double)liners->rolls * roll,
			.note = { .kind = NOTE_LINER, .count = liners->rolls,
				.lengths = { liners->width, liners->roll } } });
}

static const struct figure figures[] = {
	{ "bed", NULL, NULL, FIELD(REGION, liner, region), .flags = ROW_KEY },
	{ .heading = "Liners", .kind = FIGURE_ALIKE },
	{ "length_m", "Length", NULL, FIELD(LENGTH, liner, length) },
	{ "height_m", "Height", NULL, FIELD(INCHES, liner, height) },
	{ "area_m2", "Area each", NULL, FIELD(AREA, liner, area) },
};
const struct figure_table liner_table = FIGURE_TABLE(liner, figures);

static const struct figure cut_figures[] = {
	{ "pieces", "Pieces", NULL, FIELD(COUNT, liner_cut, pieces) },
	{ "length_m", "Long", NULL, FIELD(LENGTH, liner_cut, length), .flags = ROW_KEY },
	{ "height_m", "High", NULL, FIELD(INCHES, liner_cut, height), .flags = ROW_KEY },
};
const struct figure_table liner_cut_table = FIGURE_TABLE(liner_cut, cut_figures);

const struct word liner_way_words[] = {
	[LINER_ACROSS] = { "across", .heading = "each is cut across into lengths, and these are "
		"slit into heights" },
	[LINER_SLIT] = { "slit", .heading = "each is slit along its length into heights, and these "
		"are cut to length" },
};
static const struct figure roll_figures[] = {
	{ "width_m", NULL, NULL, FIELD(LENGTH, liners, width) },
	{ "roll_m", NULL, NULL, FIELD(LENGTH, liners, roll) },
	{ "lap_m", NULL, NULL, FIELD(LENGTH, liners, lap) },
	{ "cuts", NULL, NULL, FIELDS(ROWS, liners, cuts, cut_count), .table = &liner_cut_table },
	{ "joins", NULL, NULL, FIELD(COUNT, liners, joins) },
	{ "way", NULL, NULL, FIELD(WORD, liners, way), .words = liner_way_words },
	{ "rolls", NULL, NULL, FIELD(COUNT, liners, rolls), .flags = ROW_NEEDED },
	{ "used", NULL, NULL, FIELD(NUMBER, liners, used) },
};
const struct figure_table liners_table = FIGURE_TABLE(liners, roll_figures);
