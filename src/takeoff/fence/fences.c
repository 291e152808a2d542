#include "takeoff/fence/fences.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/fence/fence_snags.h"
#include "takeoff/fence/fence_spans.h"
#include "takeoff/fence/fence_values.h"
#include "takeoff/fence/panels.h"
#include "takeoff/fence/posts.h"
#include "takeoff/fence/stand.h"

enum { BRACKETS_TO_RAIL = 2, HINGES_TO_LEAF = 2 };

/* ---- On the ground --------------------------------------------------------------------------- */

/* As it is drawn: posts that are moved in stay in their order, or come to stand on one spot. */
static enum heading heading_of(struct leg on)
{
	if (leg_is_upright(on))
		return on.from.y < on.to.y ? HEADING_DOWN : HEADING_UP;
	return on.from.x < on.to.x ? HEADING_RIGHT : HEADING_LEFT;
}

static void open_gate(struct fence_gate *gate, const struct fencing *fencing)
{
	const struct block *fence = &fencing->fence->block;
	nm widest = block_length(fence, FENCE_LEAF), gaps = block_length(fence, FENCE_GATE_GAPS);

	gate->clear = nm_most(0, gate->length - fencing->gate_post);
	gate->leaves = gate->clear <= gaps ? 0 : gate->clear > widest ? 2 : 1;
	if (gate->leaves > 0)
		gate->leaf = (gate->clear - gaps) / gate->leaves;
}

/* All spans on the ground, as legs and gates. */
static void set_out(struct fencing *fencing, const struct basis *basis)
{
	struct stand stand = stand_of(basis->plot, &fencing->fence->block);
	int count;
	const struct fence_span *spans = fence_spans(basis->arena, fencing->fence, &count);
	struct fence_leg *legs = arena_new(basis->arena, (size_t)count, sizeof *legs);
	struct fence_gate *gates = arena_new(basis->arena, (size_t)count, sizeof *gates);

	for (int i = 0; i < count && !stop_asked(); i++) {
		struct spot from = stand_spot(&stand, spans[i].leg.from);
		struct spot to = stand_spot(&stand, spans[i].leg.to);
		enum heading heading = heading_of(spans[i].leg);
		nm length = spot_distance(from, to);

		fencing->length += length;
		if (spans[i].is_gate) {
			gates[fencing->gate_count] = (struct fence_gate){ .on = spans[i].leg,
				.heading = heading, .from = from, .to = to,
				.legs_before = fencing->leg_count, .length = length };
			open_gate(&gates[fencing->gate_count++], fencing);
		} else {
			legs[fencing->leg_count++] = (struct fence_leg){ .on = spans[i].leg,
				.heading = heading, .from = from, .to = to, .length = length };
		}
	}
	fencing->legs = legs;
	fencing->gates = gates;
	panels_lay(fencing, legs, mirror_of(basis->plot));
}

static void count_fixings(struct fencing *fencing)
{
	fencing->brackets = BRACKETS_TO_RAIL * fencing->rails *
		(fencing->panels_whole + fencing->panel_pieces);
	for (int i = 0; i < fencing->gate_count && !stop_asked(); i++) {
		fencing->hinges += (int64_t)HINGES_TO_LEAF * fencing->gates[i].leaves;
		fencing->latches += fencing->gates[i].leaves > 0;
		fencing->bolts += fencing->gates[i].leaves > 1;
	}
}

/* ---- The whole ------------------------------------------------------------------------------- */

static struct fencing fencing_of(const struct fence *fence, const struct basis *basis,
	struct fence_levels *levels)
{
	struct fencing fencing = { .fence = fence, .name = fence->name,
		.height = block_length(&fence->block, FENCE_HEIGHT),
		.section = block_length(&fence->block, FENCE_SECTION),
		.post = block_length(&fence->block, FENCE_POST),
		.gate_post = fence_derived(basis->plot, &fence->block, FENCE_GATE_POST),
		.rails = fence_rails(basis->plot, &fence->block),
		.kerf = block_length(basis->allow, ALLOW_KERF),
		.fit = block_length(basis->allow, ALLOW_FIT) };

	set_out(&fencing, basis);
	panels_cut(&fencing, basis->arena);
	fence_levels_add(levels, &fencing, posts_place(&fencing, basis->arena), basis->arena);
	posts_dig(&fencing, basis->plot, basis->arena);
	count_fixings(&fencing);
	return fencing;
}

void fences_compute(struct fences *out, const struct basis *basis)
{
	const struct details *details = &basis->plot->details;
	struct fencing *list = arena_new(basis->arena, details->fence_count, sizeof *list);

	*out = (struct fences){ .list = list };
	fence_levels_begin(&out->levels, basis);
	for (size_t i = 0; i < details->fence_count && !stop_asked(); i++) {
		size_t before = basis->snags->count;

		if (details->fences[i].run_count == 0)
			continue;
		list[out->count] = fencing_of(&details->fences[i], basis,
			&out->levels);
		fence_warn(basis, &list[out->count++]);
		snags_of_fence(basis->snags, before, (int)i);
	}
}

void fences_dig(struct dig_list *list, const struct fences *fences)
{
	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];
		double area = 0;

		for (int kind = 0; kind < POST_KINDS; kind++)
			area += (double)fencing->of_kind[kind] *
				fencing_hole(fencing, (enum post_kind)kind)->area;
		dig_add(list, (struct dig){ .region = NO_REGION, .part = DIG_HOLES, .area = area,
			.depth = fencing->hole.depth });
	}
}
