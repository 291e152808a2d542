#include "takeoff/fence/fence_levels.h"
#include "base/number.h"
#include "base/stop.h"

void fence_levels_begin(struct fence_levels *levels, const struct basis *basis)
{
	*levels = (struct fence_levels){ .surface = surface_of(basis->plot),
		.widest_allowed = block_length(basis->allow, ALLOW_FENCE_GAP) };
}

/* ---- One leg or gate ------------------------------------------------------------------------- */

/* Bottom, top and gap, by the ground from end to end. */
static void hang(const struct fence_levels *levels, const struct fencing *fencing,
	struct fence_level *level)
{
	struct surface_span span = surface_along(&levels->surface, level->from.x, level->from.y,
		level->to.x, level->to.y);

	level->bottom = span.highest - block_length(&fencing->fence->block, FENCE_GAP);
	level->top = level->bottom - fencing->height;
	level->widest = span.lowest - level->bottom;
	level->is_wide = level->widest > levels->widest_allowed;
}

/* The posts of which the indices are given. */
static void stand(const struct fence_levels *levels, struct fence_level *level,
	const int *indices, struct fence_post *posts, struct arena *arena)
{
	struct fence_level_post *list = arena_new(arena, (size_t)level->post_count, sizeof *list);

	for (int i = 0; i < level->post_count && !stop_asked(); i++) {
		struct fence_post *post = &posts[indices[i]];
		nm ground = surface_finished(&levels->surface, post->at.x, post->at.y);

		list[i] = (struct fence_level_post){ indices[i] + 1, post->at, ground,
			ground - level->bottom, ground - level->top };
		post->height = nm_most(post->height, list[i].height);
	}
	level->posts = list;
}

/* ---- A fence --------------------------------------------------------------------------------- */

/* How many posts stand on a leg: one at each end, and between its panels. */
static int posts_on(const struct fence_leg *leg)
{
	return 1 + most(1, (int)leg->whole + leg->cut_count);
}

/* Walks along a fence, as its legs and gates follow each other. */
struct along {
	const struct fencing *fencing;
	int leg, gate;   /* the next ones */
	const int *post; /* the first index of the next one that has a length */
};

/* False after the last; post_count is 0 where there is no length. */
static bool next(struct along *along, struct fence_level *level, const int **indices)
{
	const struct fencing *fencing = along->fencing;
	const struct fence_gate *gate = &fencing->gates[along->gate];
	const struct fence_leg *leg = &fencing->legs[along->leg];

	*level = (struct fence_level){ .fence = fencing->name };
	*indices = along->post;
	if (along->gate < fencing->gate_count && gate->legs_before == along->leg) {
		level->part = FENCE_PART_GATE;
		level->number = ++along->gate;
		level->from = gate->from;
		level->to = gate->to;
		level->post_count = gate->length > 0 ? 2 : 0;
	} else if (along->leg < fencing->leg_count) {
		level->part = FENCE_PART_LEG;
		level->number = ++along->leg;
		level->from = leg->from;
		level->to = leg->to;
		level->post_count = leg->length > 0 ? posts_on(leg) : 0;
	} else {
		return false;
	}
	along->post += level->post_count;
	return true;
}

void fence_levels_add(struct fence_levels *levels, struct fencing *fencing,
	struct fence_post *posts, struct arena *arena)
{
	struct along along = { fencing, 0, 0, fencing->along };
	struct fence_level level;
	const int *indices;

	fencing->first_level = levels->count;
	while (surface_is_told(&levels->surface) && !stop_asked() &&
		next(&along, &level, &indices)) {
		if (level.post_count == 0)
			continue;
		hang(levels, fencing, &level);
		stand(levels, &level, indices, posts, arena);
		fencing->widest_gap = nm_most(fencing->widest_gap, level.widest);
		levels->list = arena_grow(arena, levels->list, (size_t)levels->count,
			&levels->capacity, sizeof *levels->list);
		levels->list[levels->count++] = level;
	}
	fencing->level_count = levels->count - fencing->first_level;
}

/* ---- Figures --------------------------------------------------------------------------------- */

const struct word fence_part_words[] = {
	[FENCE_PART_LEG] = { .key = "leg" }, [FENCE_PART_GATE] = { .key = "gate" },
};

static const struct figure post_figures[] = {
	{ "post", NULL, NULL, FIELD(COUNT, fence_level_post, post) },
	{ "at_m", NULL, NULL, FIELD(SPOT, fence_level_post, at), .flags = ROW_KEY },
	{ "ground_m", NULL, NULL, FIELD(INCHES, fence_level_post, ground) },
	{ "gap_m", NULL, NULL, FIELD(INCHES, fence_level_post, gap) },
	{ "height_m", NULL, NULL, FIELD(INCHES, fence_level_post, height) },
};
const struct figure_table fence_level_post_table = FIGURE_TABLE(fence_level_post, post_figures);

static const struct figure figures[] = {
	{ "fence", NULL, NULL, FIELD(TEXT, fence_level, fence), .flags = ROW_KEY },
	{ "part", NULL, NULL, FIELD(WORD, fence_level, part), .words = fence_part_words,
		.flags = ROW_KEY },
	{ "number", NULL, NULL, FIELD(COUNT, fence_level, number) },
	{ "from_m", NULL, NULL, FIELD(SPOT, fence_level, from), .flags = ROW_KEY },
	{ "to_m", NULL, NULL, FIELD(SPOT, fence_level, to), .flags = ROW_KEY },
	{ "bottom_m", NULL, NULL, FIELD(INCHES, fence_level, bottom) },
	{ "top_m", NULL, NULL, FIELD(INCHES, fence_level, top) },
	{ "widest_gap_m", NULL, NULL, FIELD(INCHES, fence_level, widest) },
	{ "fill_or_step", NULL, NULL, FIELD(TRUTH, fence_level, is_wide) },
	{ "posts", NULL, NULL, FIELDS(ROWS, fence_level, posts, post_count),
		.table = &fence_level_post_table, .flags = JSON_LINES },
};
const struct figure_table fence_level_table = FIGURE_TABLE(fence_level, figures);
