#include "takeoff/advice/advice.h"
#include "base/number.h"
#include "base/sort.h"
#include "takeoff/advice/propose.h"

/* As sort wants it: what spares more is before. */
static int by_spared(const void *a, const void *b)
{
	const struct difference *one = &((const struct proposal *)a)->difference;
	const struct difference *other = &((const struct proposal *)b)->difference;
	int order = compare(one->cost, other->cost);

	order = order ? order : compare(one->cuts + one->panel_pieces,
		other->cuts + other->panel_pieces);
	order = order ? order : compare(one->blocks, other->blocks);
	return order ? order : (one->weight > other->weight) - (one->weight < other->weight);
}

static void pick(struct advice *out, const struct attempts *attempts)
{
	int of_kind[PROPOSAL_KINDS] = { 0 };

	for (size_t i = 0; i < attempts->count && out->count < ADVICE_MOST; i++) {
		const struct proposal *proposal = &attempts->kept[i];

		if (of_kind[proposal->kind]++ < ADVICE_OF_KIND_MOST)
			out->list[out->count++] = *proposal;
	}
}

void advice_make(struct advice *out, const struct plot *plot, const struct takeoff *takeoff)
{
	static void (*const propose[PROPOSAL_KINDS])(struct attempts *) = {
		[PROPOSE_COURSES] = propose_courses, [PROPOSE_BLOCK] = propose_blocks,
		[PROPOSE_JOINED] = propose_joinings, [PROPOSE_FENCE] = propose_fences,
		[PROPOSE_SIZE] = propose_sizes,
	};
	struct arena arena = ARENA_EMPTY;
	struct attempts attempts;

	*out = (struct advice){ .is_tried = attempts_begin(&attempts, &arena, plot, takeoff) };
	for (int i = 0; out->is_tried && i < PROPOSAL_KINDS; i++)
		propose[i](&attempts);
	if (attempts.count > 0) {
		sort(attempts.kept, attempts.count, sizeof *attempts.kept, by_spared);
		pick(out, &attempts);
	}
	out->is_all = out->is_tried && !attempts.is_short;
	arena_clear(&arena);
}
