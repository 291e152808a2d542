#include "takeoff/fence/fencing.h"
#include "takeoff/fence/fence_spans.h"
#include "takeoff/fence/panels.h"
#include "takeoff/fence/posts.h"
#include "takeoff/common/snags.h"

#include <stdlib.h>

static const nm IN_GROUND_LEAST = 24 * NM_PER_INCH;
enum { POSTS_IN_HOLE = 3, BRACKETS_TO_RAIL = 2, HINGES_TO_LEAF = 2 };

static nm greater(nm a, nm b)
{
	return a > b ? a : b;
}

nm fencing_length(const struct takeoff *takeoff, const struct block *fence, enum attribute a)
{
	if (block_value(fence, a)->set)
		return block_length(fence, a);
	switch (a) {
	case FENCE_DEPTH:
		return greater(greater(block_length(fence, FENCE_HEIGHT) / 2, IN_GROUND_LEAST),
			block_length(takeoff->allow, ALLOW_FROST));
	case FENCE_HOLE:
		return POSTS_IN_HOLE * block_length(fence, FENCE_POST);
	case FENCE_INSET:
		return fencing_length(takeoff, fence, FENCE_HOLE) / 2;
	default:
		return block_length(fence, a);
	}
}

/* ---- On the ground ---------------------------------------------------------------------------- */

/* Where posts may stand along one side of the plan. A plan too narrow has them in its middle. */
static nm move_in(nm at, nm side, nm inset)
{
	nm least = inset < side / 2 ? inset : side / 2;

	if (at < least)
		return least;
	return at > side - least ? side - least : at;
}

static struct spot spot_of(const struct takeoff *takeoff, struct place point, nm inset)
{
	const struct survey *survey = &takeoff->survey;

	return (struct spot){
		move_in(point.x * survey->cell, survey->columns * survey->cell, inset),
		move_in(point.y * survey->cell, survey->rows * survey->cell, inset) };
}

static nm distance(struct spot from, struct spot to)
{
	return llabs(to.x - from.x) + llabs(to.y - from.y);
}

static void open_gate(struct fence_gate *gate, const struct block *fence)
{
	nm most = block_length(fence, FENCE_LEAF), gaps = block_length(fence, FENCE_GATE_GAPS);

	gate->clear = gate->length - block_length(fence, FENCE_POST);
	gate->leaves = gate->clear <= gaps ? 0 : gate->clear > most ? 2 : 1;
	if (gate->leaves > 0)
		gate->leaf = (gate->clear - gaps) / gate->leaves;
}

static void set_out(struct fencing *fencing, struct arena *arena, const struct takeoff *takeoff)
{
	const struct block *fence = &fencing->fence->block;
	nm section = block_length(fence, FENCE_SECTION), post = block_length(fence, FENCE_POST);
	nm inset = fencing_length(takeoff, fence, FENCE_INSET);
	int count;
	const struct fence_span *spans = fence_spans(arena, fencing->fence, &count);
	struct fence_leg *legs = arena_new(arena, (size_t)count, sizeof *legs);
	struct fence_gate *gates = arena_new(arena, (size_t)count, sizeof *gates);

	for (int i = 0; i < count; i++) {
		struct spot from = spot_of(takeoff, spans[i].leg.from, inset);
		struct spot to = spot_of(takeoff, spans[i].leg.to, inset);
		nm length = distance(from, to);

		fencing->length += length;
		if (spans[i].is_gate) {
			gates[fencing->gate_count] = (struct fence_gate){ .on = spans[i].leg,
				.from = from, .to = to, .length = length };
			open_gate(&gates[fencing->gate_count++], fence);
		} else {
			legs[fencing->leg_count] = (struct fence_leg){ .on = spans[i].leg,
				.from = from, .to = to, .length = length };
			panels_divide(&legs[fencing->leg_count++], section, post);
		}
	}
	fencing->legs = legs;
	fencing->gates = gates;
}

static void count_fixings(struct fencing *fencing)
{
	int64_t rails = block_number(&fencing->fence->block, FENCE_RAILS);

	fencing->brackets = BRACKETS_TO_RAIL * rails *
		(fencing->panels_whole + fencing->panel_pieces);
	for (int i = 0; i < fencing->gate_count; i++) {
		fencing->hinges += (int64_t)HINGES_TO_LEAF * fencing->gates[i].leaves;
		fencing->latches += fencing->gates[i].leaves > 0;
		fencing->bolts += fencing->gates[i].leaves > 1;
	}
}

/* ---- Snags ------------------------------------------------------------------------------------ */

/* The first cell, in reading order, that has the leg's line as a side. */
static struct place first_beside(const struct leg *leg)
{
	bool upright = leg->from.x == leg->to.x;
	struct place first = { leg->from.x < leg->to.x ? leg->from.x : leg->to.x,
		leg->from.y < leg->to.y ? leg->from.y : leg->to.y };

	if (upright && first.x > 0)
		first.x--;
	if (!upright && first.y > 0)
		first.y--;
	return first;
}

static void warn_tight(struct snag_list *snags, const struct plot *plot, const struct leg *on,
	const char *what, nm length)
{
	const char *text = arena_print(snags->arena,
		"%s from centre to centre of these posts leave no room for %s.",
		snag_length(snags->arena, plot, length), what);

	snag_add(snags, SNAG_FENCE_TIGHT, NULL, NO_REGION, text)->cell = first_beside(on);
}

static void warn_hole(struct snag_list *snags, const struct plot *plot,
	const struct fencing *fencing)
{
	nm post = block_length(&fencing->fence->block, FENCE_POST), hole = fencing->hole.across;
	const struct place *first = fencing->fence->runs[0].points;
	struct leg on = { first[0], first[1] };

	if ((double)hole * (double)hole >= 2 * (double)post * (double)post)
		return;
	snag_add(snags, SNAG_FENCE_HOLE, NULL, NO_REGION, arena_print(snags->arena,
		"A hole %s across does not take a post %s square.",
		snag_length(snags->arena, plot, hole),
		snag_length(snags->arena, plot, post)))->cell = first_beside(&on);
}

static void warn(struct snag_list *snags, const struct plot *plot, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leg_count; i++)
		if (fencing->legs[i].whole + fencing->legs[i].cut_count == 0)
			warn_tight(snags, plot, &fencing->legs[i].on, "a panel",
				fencing->legs[i].length);
	for (int i = 0; i < fencing->gate_count; i++)
		if (fencing->gates[i].leaves == 0)
			warn_tight(snags, plot, &fencing->gates[i].on, "a gate",
				fencing->gates[i].length);
	warn_hole(snags, plot, fencing);
}

/* ---- The whole -------------------------------------------------------------------------------- */

void fencing_compute(struct takeoff *takeoff, struct arena *arena, const struct plot *plot,
	struct snag_list *snags)
{
	const struct details *details = &plot->details;
	struct fencing *fencings = arena_new(arena, details->fence_count, sizeof *fencings);
	int count = 0;

	for (size_t i = 0; i < details->fence_count; i++) {
		struct fencing *fencing = &fencings[count];

		if (details->fences[i].run_count == 0)
			continue;
		count++;
		fencing->fence = &details->fences[i];
		fencing->kerf = block_length(takeoff->allow, ALLOW_KERF);
		fencing->fit = block_length(takeoff->allow, ALLOW_FIT);
		set_out(fencing, arena, takeoff);
		panels_cut(fencing, arena);
		posts_place(fencing, arena);
		posts_dig(fencing, takeoff);
		count_fixings(fencing);
		warn(snags, plot, fencing);
	}
	takeoff->fencings = fencings;
	takeoff->fencing_count = count;
}

void fencing_dig(struct dig_list *list, const struct takeoff *takeoff)
{
	for (int i = 0; i < takeoff->fencing_count; i++) {
		const struct fencing *fencing = &takeoff->fencings[i];

		dig_add(list, (struct dig){ .region = NO_REGION, .part = DIG_HOLES,
			.area = fencing->post_count * fencing->hole.area,
			.depth = fencing->hole.depth });
	}
}

const char *post_kind_word(enum post_kind kind)
{
	static const char *const words[] = {
		[POST_END] = "end", [POST_CORNER] = "corner", [POST_TEE] = "tee",
		[POST_GATE] = "gate", [POST_LINE] = "line",
	};

	return words[kind];
}
