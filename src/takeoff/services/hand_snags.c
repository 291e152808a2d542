#include "takeoff/services/hand_snags.h"
#include "base/number.h"
#include "base/sort.h"
#include "base/stop.h"
#include "plot/edit/lay.h"

#include <stdlib.h>

static void touch_add(struct hand_touches *touches, struct hand_touch touch)
{
	touches->list = memory_grow(touches->list, touches->count, &touches->capacity,
		sizeof *touches->list);
	touches->list[touches->count++] = touch;
}

/* The cells that a box meets; of a point the two or four that it is on the edge of. */
static struct rectangle cells_of(const struct survey *survey, struct spot from, struct spot to)
{
	nm cell = survey->cell;

	return (struct rectangle){ held(from.x / cell, 0, survey->columns - 1),
		held(from.y / cell, 0, survey->rows - 1),
		held((to.x - 1) / cell, 0, survey->columns - 1),
		held((to.y - 1) / cell, 0, survey->rows - 1) };
}

static struct rectangle cells_at(const struct survey *survey, struct spot at)
{
	return cells_of(survey, (struct spot){ at.x - 1, at.y - 1 },
		(struct spot){ at.x + 1, at.y + 1 });
}

void hand_touches_add(struct hand_touches *touches, const struct survey *survey,
	const struct hand *hand)
{
	for (int i = 0; i < hand->dig_count && !stop_asked(); i++) {
		const struct hand_dig *dig = &hand->digs[i];

		touch_add(touches, (struct hand_touch){ dig->kind,
			dig->kind == HAND_GROUND ? dig->region : dig->place, 0, dig->first,
			cells_of(survey, dig->from, dig->to) });
	}
	for (int i = 0; i < hand->post_count && !stop_asked(); i++) {
		const struct hand_post *post = &hand->posts[i];
		struct rectangle cells = cells_at(survey, post->at);

		touch_add(touches, (struct hand_touch){ HAND_HOLE, (int)post->number, post->fence,
			{ cells.left, cells.top }, cells });
	}
	for (int i = 0; i < hand->plant_count && !stop_asked(); i++) {
		const struct hand_plant *plant = &hand->plants[i];
		struct rectangle cells = cells_at(survey, plant->at);

		touch_add(touches, (struct hand_touch){ HAND_PLANT, plant->kind, plant->region,
			{ cells.left, cells.top }, cells });
	}
}

static int by_what(const void *a, const void *b)
{
	const struct hand_touch *one = a, *other = b;
	int order = compare(one->kind, other->kind);

	if (order == 0)
		order = compare(one->among, other->among);
	return order ? order : compare(one->which, other->which);
}

/* Puts one more touch of the same into the first. */
static void join(struct hand_touch *touch, const struct hand_touch *more)
{
	touch->cells = rectangle_around(touch->cells, more->cells);
	if (place_order(more->first, touch->first) < 0)
		touch->first = more->first;
}

static void warn(const struct basis *basis, enum snag_code code, const struct hand_touch *touch)
{
	nm near = code == SNAG_SERVICE_NEAR ? block_length(basis->allow, ALLOW_SERVICE_NEAR) : 0;
	int region = touch->kind == HAND_GROUND ? touch->which :
		touch->kind == HAND_PLANT ? touch->among : NO_REGION;
	struct snag *snag = snag_add(basis->snags, code, region, SNAG_FIGURES_OF(near));

	snag->kind = touch->kind;
	snag_put_around(snag, touch->first, touch->cells);
}

void hand_touches_warn(struct hand_touches *touches, const struct basis *basis,
	enum snag_code code)
{
	if (touches->count > 1)
		sort(touches->list, touches->count, sizeof *touches->list, by_what);
	for (size_t i = 0, next; i < touches->count && !stop_asked(); i = next) {
		struct hand_touch *touch = &touches->list[i];

		for (next = i + 1; next < touches->count && by_what(touch, &touches->list[next]) ==
		     0; next++)
			join(touch, &touches->list[next]);
		warn(basis, code, touch);
	}
}

void hand_touches_fini(struct hand_touches *touches)
{
	free(touches->list);
}
