#include "takeoff/walls/cutting.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

/* What the walls need of one block size, joint and use, gathered before it is cut. */
struct need {
	enum block_use use;
	struct size block;
	nm joint;
	int64_t whole;
	nm length;     /* of all runs */
	double weight; /* kg, as laid */
	struct batch *batches;
	size_t batch_count, batch_capacity;
};

struct needs {
	struct need *list;
	size_t count, capacity;
};

static struct need *need_of(struct needs *needs, enum block_use use, const struct size *block,
	nm joint)
{
	for (size_t i = 0; i < needs->count; i++) {
		struct need *need = &needs->list[i];

		if (need->use == use && need->joint == joint && size_equal(&need->block, block))
			return need;
	}
	needs->list = memory_grow(needs->list, needs->count, &needs->capacity, sizeof *needs->list);
	needs->list[needs->count] = (struct need){ .use = use, .block = *block, .joint = joint };
	return &needs->list[needs->count++];
}

static void add_course(struct need *need, const struct wall_course *course, int64_t times,
	double density)
{
	need->whole += times * course->whole;
	need->length += times * course->length;
	need->weight += density * wall_volume(times * course->length, &need->block);
	if (course->cut == 0 || times == 0)
		return;
	for (int i = 0; i < course->run_count && !stop_asked(); i++) {
		const struct wall_run *run = &course->runs[i];

		for (int j = 0; j < run->piece_count; j++) {
			if (run->pieces[j] >= need->block.along)
				continue;
			need->batches = memory_grow(need->batches, need->batch_count,
				&need->batch_capacity, sizeof *need->batches);
			need->batches[need->batch_count++] =
				(struct batch){ run->pieces[j], times };
		}
	}
}

static void gather(struct needs *needs, const struct walls *walls)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];
		struct need *need = need_of(needs, USE_WALL, &wall->block, wall->joint);
		double density = wall_density(wall->bed);

		add_course(need, &wall->odd, (wall->courses + 1) / 2, density);
		add_course(need, &wall->even, wall->courses / 2, density);
	}
	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		if (wall->has_cap)
			add_course(need_of(needs, USE_CAP, &wall->cap_block, wall->joint),
				&wall->cap, 1, wall_density(wall->bed));
	}
}

/* The fewest blocks that could give the pieces. */
static int64_t floor_of(const struct need *need, const struct saw *saw)
{
	nm stone = 0;

	for (size_t i = 0; i < need->batch_count; i++)
		stone += need->batches[i].count * saw_piece(saw, need->batches[i].place);
	return need->whole + quotient_up(stone, saw->block);
}

/* The share of blocks that breaks, rounded up. */
static int64_t share_of(int64_t bought, const struct block *allow)
{
	return quotient_up(bought * block_number(allow, ALLOW_BREAKAGE), 100 * MILLION);
}

static struct cutting cut_need(struct arena *arena, const struct need *need,
	const struct block *allow)
{
	struct cutting cutting = { .use = need->use, .block = need->block, .joint = need->joint,
		.whole = need->whole, .kerf = block_length(allow, ALLOW_KERF),
		.gap = nm_most(block_length(allow, ALLOW_FIT), need->joint) };
	nm block = need->block.along;
	struct saw saw = { nm_most(block - need->joint, block / 2), cutting.kerf, cutting.gap };

	cutting.floor = floor_of(need, &saw); /* before equal batches are joined */
	cutting.cuts = packing_cut(arena, &saw, need->batches, need->batch_count,
		&cutting.cut_count);
	for (int i = 0; i < cutting.cut_count; i++)
		cutting.cut_blocks += cutting.cuts[i].blocks;
	cutting.bought = cutting.whole + cutting.cut_blocks;
	cutting.breakage = share_of(cutting.bought, allow);
	if (cutting.breakage > 0)
		cutting.breakage = nm_most(cutting.breakage, BREAKAGE_LEAST);
	cutting.order = cutting.bought + cutting.breakage;
	/* Beds may differ in density: each counts by the length laid with it. */
	cutting.weight = need->weight * (double)cutting.bought * (double)block /
		(double)need->length;
	return cutting;
}

void cutting_plan(struct cuttings *out, const struct basis *basis, const struct walls *walls)
{
	struct needs needs = { NULL, 0, 0 };
	struct cutting *cuttings;

	gather(&needs, walls);
	cuttings = arena_new(basis->arena, needs.count, sizeof *cuttings);
	for (size_t i = 0; i < needs.count; i++) {
		cuttings[i] = cut_need(basis->arena, &needs.list[i], basis->allow);
		free(needs.list[i].batches);
	}
	*out = (struct cuttings){ cuttings, (int)needs.count };
	free(needs.list);
}

void cutting_items(struct item_list *items, const struct cuttings *cuttings)
{
	for (int i = 0; i < cuttings->count; i++) {
		const struct cutting *cutting = &cuttings->list[i];

		item_add(items, &(struct item){
			.good = cutting->use == USE_CAP ? GOOD_BLOCK_CAP : GOOD_BLOCK_WALL,
			.section = SECTION_WALLS, .block = cutting->block,
			.laid = (double)cutting->bought, .spare = (double)cutting->breakage,
			.order = (double)cutting->order,
			.unit_weight = cutting->bought > 0 ?
				cutting->weight / (double)cutting->bought : 0,
			.note = { .kind = NOTE_BREAKAGE,
				.percent = block_number(items->allow, ALLOW_BREAKAGE),
				.count = cutting->breakage > share_of(cutting->bought,
					items->allow) ? BREAKAGE_LEAST : 0,
			} });
	}
}

static const struct word use_words[] = {
	[USE_WALL] = { "wall", "Wall", "Block" }, [USE_CAP] = { "cap", "Cap", "Cap" },
};
static const struct figure figures[] = {
	{ "use", NULL, "", FIELD(WORD, cutting, use), .words = use_words,
		.flags = PANEL_TITLE | ROW_KEY },
	{ "block_m", NULL, "", FIELD(SIZE, cutting, block), .flags = PANEL_TITLE | ROW_KEY },
	{ "joint_m", NULL, NULL, FIELD(LENGTH, cutting, joint) },
	{ NULL, NULL, "To order", FIELD(COUNT, cutting, order) },
	{ NULL, NULL, "of them spare", FIELD(COUNT, cutting, breakage) },
	{ "blocks_whole", NULL, "Laid whole", FIELD(COUNT, cutting, whole) },
	{ "blocks_cut", NULL, "Cut up", FIELD(COUNT, cutting, cut_blocks) },
	{ "blocks_bought", NULL, NULL, FIELD(COUNT, cutting, bought) },
	{ "floor", NULL, NULL, FIELD(COUNT, cutting, floor) },
	{ "breakage", NULL, NULL, FIELD(COUNT, cutting, breakage) },
	{ "cuts", NULL, NULL, FIELDS(CUTS, cutting, cuts, cut_count), .flags = JSON_SPACED },
};
const struct figure_table cutting_table = FIGURE_TABLE(cutting, figures);
