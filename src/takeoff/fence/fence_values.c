#include "takeoff/fence/fence_values.h"
#include "base/number.h"

/* By the plot's units. Common practice, no published source. */
static const nm in_ground_least[] = { [UNITS_IMPERIAL] = 24 * NM_PER_INCH,
	[UNITS_METRIC] = 600 * NM_PER_MM };
static const nm height_of_two_rails[] = { [UNITS_IMPERIAL] = 4 * NM_PER_FOOT,
	[UNITS_METRIC] = 1200 * NM_PER_MM };
enum { POSTS_IN_HOLE = 3 };

int64_t fence_rails(const struct plot *plot, const struct block *fence)
{
	const struct value *own = block_value(fence, FENCE_RAILS);

	if (own->set)
		return own->as.number;
	return block_length(fence, FENCE_HEIGHT) > height_of_two_rails[plot_units(plot)] ? 3 : 2;
}

nm fence_derived(const struct plot *plot, const struct block *fence, enum attribute a)
{
	if (block_value(fence, a)->set)
		return block_length(fence, a);
	switch (a) {
	case FENCE_DEPTH:
		return nm_most(nm_most(block_length(fence, FENCE_HEIGHT) / 2,
			in_ground_least[plot_units(plot)]),
			block_length(&plot->details.allow, ALLOW_FROST));
	case FENCE_HOLE:
		return POSTS_IN_HOLE * block_length(fence, FENCE_POST);
	case FENCE_GATE_POST:
		return block_length(fence, FENCE_POST);
	case FENCE_INSET:
		return fence_derived(plot, fence, FENCE_HOLE) / 2;
	default:
		return block_length(fence, a);
	}
}

nm fence_gate_hole(const struct plot *plot, const struct block *fence)
{
	nm post = fence_derived(plot, fence, FENCE_GATE_POST);

	return post == block_length(fence, FENCE_POST) ? fence_derived(plot, fence, FENCE_HOLE) :
		POSTS_IN_HOLE * post;
}
