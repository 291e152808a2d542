#include "takeoff/fence/fences.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/fence/fence_spans.h"
#include "takeoff/fence/fence_values.h"
#include "takeoff/fence/panels.h"
#include "takeoff/fence/posts.h"

#include <stdlib.h>

enum { BRACKETS_TO_RAIL = 2, HINGES_TO_LEAF = 2 };

/* ---- On the ground --------------------------------------------------------------------------- */

/* `at` moved into the range where posts may stand along one side of the plan; to its middle if
 * the plan is too narrow. */
static nm move_in(nm at, nm side, nm inset)
{
	nm nearest = nm_least(inset, side / 2);

	return nm_least(nm_most(at, nearest), side - nearest);
}

static struct spot spot_of(const struct survey *survey, struct place point, nm inset)
{
	return (struct spot){
		move_in(point.x * survey->cell, survey->columns * survey->cell, inset),
		move_in(point.y * survey->cell, survey->rows * survey->cell, inset) };
}

static enum heading heading_of(struct spot from, struct spot to)
{
	if (from.y == to.y)
		return from.x < to.x ? HEADING_RIGHT : HEADING_LEFT;
	return from.y < to.y ? HEADING_DOWN : HEADING_UP;
}

static void open_gate(struct fence_gate *gate, const struct block *fence)
{
	nm widest = block_length(fence, FENCE_LEAF), gaps = block_length(fence, FENCE_GATE_GAPS);
	nm clear = gate->length - block_length(fence, FENCE_POST);

	gate->clear = clear > 0 ? clear : 0;
	gate->leaves = clear <= gaps ? 0 : clear > widest ? 2 : 1;
	if (gate->leaves > 0)
		gate->leaf = (gate->clear - gaps) / gate->leaves;
}

static void set_out(struct fencing *fencing, const struct basis *basis)
{
	const struct block *fence = &fencing->fence->block;
	nm section = block_length(fence, FENCE_SECTION), post = block_length(fence, FENCE_POST);
	nm inset = fence_derived(basis->allow, fence, FENCE_INSET);
	int count;
	const struct fence_span *spans = fence_spans(basis->arena, fencing->fence, &count);
	struct fence_leg *legs = arena_new(basis->arena, (size_t)count, sizeof *legs);
	struct fence_gate *gates = arena_new(basis->arena, (size_t)count, sizeof *gates);

	for (int i = 0; i < count && !stop_asked(); i++) {
		struct spot from = spot_of(basis->survey, spans[i].leg.from, inset);
		struct spot to = spot_of(basis->survey, spans[i].leg.to, inset);
		nm length = llabs(to.x - from.x) + llabs(to.y - from.y);

		fencing->length += length;
		if (spans[i].is_gate) {
			gates[fencing->gate_count] = (struct fence_gate){ .on = spans[i].leg,
				.heading = heading_of(from, to), .from = from, .to = to,
				.length = length };
			open_gate(&gates[fencing->gate_count++], fence);
		} else {
			legs[fencing->leg_count] = (struct fence_leg){ .on = spans[i].leg,
				.heading = heading_of(from, to), .from = from, .to = to,
				.length = length };
			panels_divide(&legs[fencing->leg_count++], section, post);
		}
	}
	fencing->legs = legs;
	fencing->gates = gates;
}

static void count_fixings(struct fencing *fencing)
{
	int64_t rails = fence_rails(&fencing->fence->block);

	fencing->brackets = BRACKETS_TO_RAIL * rails *
		(fencing->panels_whole + fencing->panel_pieces);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++) {
		fencing->hinges += (int64_t)HINGES_TO_LEAF * fencing->gates[i].leaves;
		fencing->latches += fencing->gates[i].leaves > 0;
		fencing->bolts += fencing->gates[i].leaves > 1;
	}
}

/* ---- Snags ----------------------------------------------------------------------------------- */

/* The first cell, in reading order, that has the leg's line as a side. */
static struct place first_beside(const struct leg *leg)
{
	bool upright = leg->from.x == leg->to.x;
	struct place first = { least(leg->from.x, leg->to.x), least(leg->from.y, leg->to.y) };

	if (upright && first.x > 0)
		first.x--;
	if (!upright && first.y > 0)
		first.y--;
	return first;
}

static void warn_tight(struct snag_list *snags, const struct leg *on, bool is_gate, nm length)
{
	struct snag *snag = snag_add(snags, SNAG_FENCE_TIGHT, NO_REGION, SNAG_FIGURES_OF(length));

	snag->cell = first_beside(on);
	snag->kind = is_gate ? 1 : 0;
}

static void warn_hole(struct snag_list *snags, const struct fencing *fencing)
{
	nm post = fencing->post, hole = fencing->hole.across;
	const struct place *first = fencing->fence->runs[0].points;
	struct leg on = { first[0], first[1] };

	if ((double)hole * (double)hole < 2 * (double)post * (double)post)
		snag_add(snags, SNAG_FENCE_HOLE, NO_REGION, SNAG_FIGURES_OF(hole, post))->cell =
			first_beside(&on);
}

static void warn(struct snag_list *snags, const struct fencing *fencing)
{
	for (int i = 0; i < fencing->leg_count && !stop_asked(); i++)
		if (fencing->legs[i].whole + fencing->legs[i].cut_count == 0)
			warn_tight(snags, &fencing->legs[i].on, false, fencing->legs[i].length);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++)
		if (fencing->gates[i].leaves == 0)
			warn_tight(snags, &fencing->gates[i].on, true, fencing->gates[i].length);
	warn_hole(snags, fencing);
}

/* ---- The whole ------------------------------------------------------------------------------- */

static struct fencing fencing_of(const struct fence *fence, const struct basis *basis)
{
	struct fencing fencing = { .fence = fence, .name = fence->name,
		.height = block_length(&fence->block, FENCE_HEIGHT),
		.section = block_length(&fence->block, FENCE_SECTION),
		.post = block_length(&fence->block, FENCE_POST),
		.kerf = block_length(basis->allow, ALLOW_KERF),
		.fit = block_length(basis->allow, ALLOW_FIT) };

	set_out(&fencing, basis);
	panels_cut(&fencing, basis->arena);
	posts_place(&fencing, basis->arena);
	posts_dig(&fencing, basis->allow);
	count_fixings(&fencing);
	return fencing;
}

void fences_compute(struct fences *out, const struct basis *basis)
{
	const struct details *details = &basis->plot->details;
	struct fencing *list = arena_new(basis->arena, details->fence_count, sizeof *list);

	*out = (struct fences){ list, 0 };
	for (size_t i = 0; i < details->fence_count && !stop_asked(); i++) {
		if (details->fences[i].run_count == 0)
			continue;
		list[out->count] = fencing_of(&details->fences[i], basis);
		warn(basis->snags, &list[out->count++]);
	}
}

void fences_dig(struct dig_list *list, const struct fences *fences)
{
	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		dig_add(list, (struct dig){ .region = NO_REGION, .part = DIG_HOLES,
			.area = fencing->post_count * fencing->hole.area,
			.depth = fencing->hole.depth });
	}
}
