#include "takeoff/advice/propose.h"
#include "base/stop.h"

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

void propose_fences(struct attempts *attempts)
{
	const struct details *details = &attempts->plot->details;
	const struct mirror mirror = mirror_of(attempts->plot);

	for (size_t i = 0; i < details->fence_count && !stop_asked(); i++) {
		struct legs legs = LEGS_EMPTY;

		fence_legs(&details->fences[i], &legs);
		legs_join(&legs);
		for (size_t j = 0; j < legs.count && !stop_asked() && !attempts->is_short; j++)
			if (images_among(&mirror, &legs, j, legs.items[j]) == 0)
				propose_leg(attempts, (struct proposal){ .kind = PROPOSE_FENCE,
					.fence = (int)i, .leg = legs.items[j],
					.leg_count = images_among(&mirror, &legs, legs.count,
						legs.items[j]) });
		legs_fini(&legs);
	}
}
