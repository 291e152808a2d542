#include "takeoff/services/trench_holes.h"
#include "base/stop.h"
#include "takeoff/services/service_values.h"

#include <stdlib.h>

/* One trench after the other. */
struct looking {
	const struct basis *basis;
	struct post_holes holes;
	enum trench_of kind;
	int line;            /* service of the plot; of the header their count */
	nm width;
};

/* Once, however many legs it meets. */
static void warn(void *looking, struct post_hole_at *hole)
{
	const struct looking *at = looking;
	struct snag *snag;

	if (hole->mark == at->line)
		return;
	hole->mark = at->line;
	snag = snag_add(at->basis->snags, SNAG_TRENCH_HOLE, NO_REGION, SNAG_FIGURES_OF(
		hole->fence, hole->post + 1, at->line, (hole->across + at->width + 1) / 2));
	snag->kind = at->kind;
	post_hole_put(snag, at->basis->survey, hole);
}

static void look_along(struct looking *looking, const struct legs *legs)
{
	nm half = looking->width / 2;

	for (size_t i = 0; i < legs->count && !stop_asked(); i++) {
		struct near_thing leg = near_leg(legs->items[i], looking->basis->survey->cell, 0);

		post_holes_meeting(&looking->holes, &(struct cover_box){ leg.left - half,
			leg.top - half, leg.right + half, leg.bottom + half, 0 }, warn, looking);
	}
}

void trench_holes_warn(const struct basis *basis, const struct fences *fences,
	const struct work_ground *ground)
{
	const struct services *services = &basis->plot->details.around.services;
	struct looking looking = { .basis = basis };

	if (services->count + ground->header->count == 0)
		return;
	looking.holes = post_holes_of(fences, basis->plot);
	for (; looking.line < (int)services->count && !stop_asked(); looking.line++) {
		const struct service *service = &services->items[looking.line];
		struct legs legs = LEGS_EMPTY;

		if (!service->is_to_lay)
			continue;
		looking.kind = TRENCH_OF_LINE;
		looking.width = service_trench(basis->plot, service);
		routes_legs(&service->routes, &legs);
		look_along(&looking, &legs);
		legs_fini(&legs);
	}
	looking.kind = TRENCH_OF_HEADER;
	looking.width = ground->header_width;
	look_along(&looking, ground->header);
	free(looking.holes.list);
}
