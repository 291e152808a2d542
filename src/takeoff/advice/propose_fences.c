#include "takeoff/advice/propose.h"
#include "base/stop.h"

/* So many legs of all fences are tried, with their images: work is left for beds. */
enum { LEGS_MOST = 32 };

/* How many of the first `count` legs are the leg or its images. */
static int images_among(const struct mirror *mirror, const struct legs *legs, size_t count,
	struct leg leg)
{
	struct leg images[IMAGES_MOST];
	int image_count = mirror_legs(mirror, leg, images), among = 0;

	for (size_t i = 0; i < count; i++)
		for (int j = 0; j < image_count; j++)
			among += leg_equal(legs->items[i], images[j]);
	return among;
}

/* Tries all ways of one leg and keeps the best. */
static void propose_leg(struct attempts *attempts, struct proposal proposal)
{
	struct proposal best = { .difference = { .panel_pieces = 0 } };
	bool is_upright = leg_is_upright(proposal.leg);

	for (int way = 1; way <= FENCE_REACH && !stop_asked(); way++)
		for (int outward = -1; outward <= 1; outward += 2) {
			proposal.right = is_upright ? outward * way : 0;
			proposal.down = is_upright ? 0 : outward * way;
			if (attempt(attempts, &proposal) && proposal.difference.panel_pieces <
				best.difference.panel_pieces)
				best = proposal;
		}
	if (best.difference.panel_pieces < 0)
		attempts_keep(attempts, &best);
}

/* The legs of one fence; *left: how many more may be tried. */
static void propose_legs(struct attempts *attempts, int fence, const struct legs *legs, int *left)
{
	const struct mirror mirror = mirror_of(attempts->plot);

	for (size_t i = 0; i < legs->count && !attempts->is_short && !stop_asked(); i++) {
		if (images_among(&mirror, legs, i, legs->items[i]) > 0)
			continue;
		if ((*left)-- > 0)
			propose_leg(attempts, (struct proposal){ .kind = PROPOSE_FENCE,
				.fence = fence, .leg = legs->items[i], .leg_count =
				images_among(&mirror, legs, legs->count, legs->items[i]) });
		else
			attempts->is_short = true;
	}
}

void propose_fences(struct attempts *attempts)
{
	const struct details *details = &attempts->plot->details;
	int left = LEGS_MOST;

	for (size_t i = 0; i < details->fence_count && !stop_asked(); i++) {
		struct legs legs = LEGS_EMPTY;

		fence_legs(&details->fences[i], &legs);
		legs_join(&legs);
		propose_legs(attempts, (int)i, &legs, &left);
		legs_fini(&legs);
	}
}
