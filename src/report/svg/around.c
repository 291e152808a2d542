#include "report/svg/around.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/svg/type.h"

#include <stdlib.h>

static const nm SIGN = 12 * NM_PER_MM / 10; /* from the middle of a sign to its end */

static void open_field(const struct page *page)
{
	ink_open(page->report.out, "clip-path=\"url(#field)\"");
}

/* In the middle of what is seen of it, else anywhere there; counted where there is no room, and
 * where nothing is seen. */
static void name_thing(struct page *page, const char *words, struct box box)
{
	struct box seen = box_common(box, page->room.within);
	struct at middle = box_middle(seen);
	const struct type type = { .size = TYPE_SMALL };

	if (seen.right <= seen.left || seen.bottom <= seen.top ||
	    (!page_try(page, words, middle, type) &&
	    !page_try_beside(page, words, middle, SIGN, type)))
		page->left_out[LEFT_AROUND]++;
}

/* ---- Houses and what is kept ----------------------------------------------------------------- */

static struct box obstacle_box(const struct page *page, const struct obstacle *thing)
{
	struct at from, to, middle = page_point(page, thing->at);
	nm across = 2 * scaled(thing->radius, page->layout->scale);

	if (thing->radius > 0)
		return box_around(middle, across, across);
	from = page_point(page, (struct place){ thing->cells.left, thing->cells.top });
	to = page_point(page, (struct place){ thing->cells.right + 1, thing->cells.bottom + 1 });
	return (struct box){ from.x, from.y, to.x, to.y };
}

static void draw_obstacles(struct page *page, const struct obstacles *things, enum pen pen)
{
	open_field(page);
	page_pen(page, pen);
	for (size_t i = 0; i < things->count && !stop_asked(); i++) {
		const struct obstacle *thing = &things->items[i];
		struct box box = obstacle_box(page, thing);

		if (thing->radius > 0)
			ink_circle(page->report.out, box_middle(box), box_width(box) / 2);
		else
			ink_box(page->report.out, box);
	}
	page_lift(page);
	ink_close(page->report.out);
}

void around_draw_houses(struct page *page)
{
	draw_obstacles(page, &page->report.plot->details.around.houses, PEN_HOUSE);
}

static void name_obstacles(struct page *page, const struct obstacles *things, const char *what)
{
	const struct report *report = &page->report;

	page_pen(page, PEN_WORDS);
	for (size_t i = 0; i < things->count && !stop_asked(); i++) {
		const struct obstacle *thing = &things->items[i];

		name_thing(page, thing->radius == 0 ? say(report, "%s: %s", what, thing->name) :
			say(report, "%s: %s, radius %s", what, thing->name,
			plain_length(report, thing->radius)), obstacle_box(page, thing));
		arena_clear(report->words);
	}
	page_lift(page);
}

/* ---- Services -------------------------------------------------------------------------------- */

enum pen around_pen(enum service_kind kind)
{
	static const enum pen pens[SERVICE_KINDS] = { [SERVICE_WATER] = PEN_WATER,
		[SERVICE_GAS] = PEN_GAS, [SERVICE_POWER] = PEN_POWER,
		[SERVICE_TELECOM] = PEN_TELECOM, [SERVICE_DRAIN] = PEN_DRAIN,
		[SERVICE_OTHER] = PEN_OTHER };

	return pens[kind];
}

const char *around_service_words(const struct report *report, const struct service *service)
{
	const struct value *depth = block_value(&service->block, SERVICE_DEPTH);

	return say(report, "%s, %s%s%s", service_words[service->kind],
		service->is_to_lay ? "to lay" : "existing", depth->set ? ", down " : "",
		depth->set ? plain_inches(report, depth->as.length) : "");
}

static void draw_route(struct page *page, const struct route *route)
{
	struct at *points = memory_new((size_t)route->count, sizeof *points);

	for (int i = 0; i < route->count; i++)
		points[i] = page_point(page, route->points[i]);
	ink_points(page->report.out, points, route->count, false);
	free(points);
}

/* Along the route's longest legs, one after the other, at three places of each: on the line, for it
 * to be read with it. */
static bool try_along(struct page *page, const struct route *route, const char *words)
{
	static const int quarters[] = { 2, 1, 3 };

	for (int i = 0; i + 1 < route->count; i++) {
		struct at a = page_point(page, route->points[i]);
		struct at b = page_point(page, route->points[i + 1]);
		struct type type = { .size = TYPE_SMALL, .is_upright = a.x == b.x };

		if (type_width(words, type) > nm_most(llabs(b.x - a.x), llabs(b.y - a.y)))
			continue;
		for (int j = 0; j < 3; j++)
			if (page_try(page, words, (struct at){ a.x + quarters[j] * (b.x - a.x) / 4,
				a.y + quarters[j] * (b.y - a.y) / 4 }, type))
				return true;
	}
	return false;
}

static bool try_at_start(struct page *page, const struct route *route, const char *words)
{
	return page_try_beside(page, words, page_point(page, route->points[0]), SIGN,
		(struct type){ .size = TYPE_SMALL });
}

static void name_route(struct page *page, const struct service *service, const struct route *route)
{
	const char *some = around_service_words(&page->report, service);
	const char *all = say(&page->report, "%s: %s", some, service->name);
	const char *kind = service_words[service->kind];

	if (!try_along(page, route, all) && !try_along(page, route, some) &&
	    !try_along(page, route, kind) && !try_at_start(page, route, all) &&
	    !try_at_start(page, route, kind))
		page->left_out[LEFT_SERVICES]++;
}

static void draw_service(struct page *page, const struct service *service)
{
	page_pen(page, around_pen(service->kind));
	ink_open(page->report.out, "%s", service->is_to_lay ? AROUND_TO_LAY : "");
	for (size_t i = 0; i < service->routes.count; i++)
		draw_route(page, &service->routes.items[i]);
	ink_close(page->report.out);
	page_lift(page);
}

static void name_services(struct page *page, const struct services *services)
{
	page_pen(page, PEN_WORDS);
	for (size_t i = 0; i < services->count; i++)
		for (size_t j = 0; j < services->items[i].routes.count && !stop_asked(); j++) {
			name_route(page, &services->items[i], &services->items[i].routes.items[j]);
			arena_clear(page->report.words);
		}
	page_lift(page);
}

/* ---- Single points --------------------------------------------------------------------------- */

static void draw_drop(struct page *page, struct place drop)
{
	struct at at = page_point(page, drop);
	const struct at points[] = { { at.x - SIGN, at.y - 2 * SIGN }, at,
		{ at.x + SIGN, at.y - 2 * SIGN } };

	page_pen(page, PEN_DROP);
	ink_points(page->report.out, points, 3, true);
	page_lift(page);
	room_take(&page->room, (struct box){ at.x - SIGN, at.y - 2 * SIGN, at.x + SIGN, at.y });
}

static void draw_ties(struct page *page, const struct ties *ties)
{
	page_pen(page, PEN_TIE);
	for (size_t i = 0; i < ties->count; i++) {
		struct at at = page_point(page, ties->items[i].at);

		ink_circle(page->report.out, at, SIGN / 2);
		room_take(&page->room, box_around(at, SIGN, SIGN));
	}
	page_lift(page);
}

/* Near a point, or farther off. */
static void name_point(struct page *page, const char *words, struct place point)
{
	for (int far = 1; far <= 6; far++)
		if (page_try_beside(page, words, page_point(page, point), far * SIGN,
			(struct type){ .size = TYPE_SMALL }))
			return;
	page->left_out[LEFT_AROUND]++;
}

static void name_ties(struct page *page, const struct ties *ties)
{
	page_pen(page, PEN_WORDS);
	for (size_t i = 0; i < ties->count && !stop_asked(); i++) {
		const struct tie *tie = &ties->items[i];

		name_point(page, say(&page->report, "%s to %s",
			plain_length(&page->report, tie->length), tie->name), tie->at);
		arena_clear(page->report.words);
	}
	page_lift(page);
}

void around_draw(struct page *page)
{
	const struct surroundings *around = &page->report.plot->details.around;

	draw_obstacles(page, &around->kept, PEN_KEEP);
	for (size_t i = 0; i < around->services.count && !stop_asked(); i++)
		draw_service(page, &around->services.items[i]);
	draw_ties(page, &around->ties);
	if (around->has_drop)
		draw_drop(page, around->drop);
}

void around_name(struct page *page)
{
	const struct surroundings *around = &page->report.plot->details.around;

	name_services(page, &around->services);
	name_obstacles(page, &around->kept, "keep");
	name_obstacles(page, &around->houses, "house");
	name_ties(page, &around->ties);
	if (!around->has_drop)
		return;
	page_pen(page, PEN_WORDS);
	name_point(page, "deliveries", around->drop);
	page_lift(page);
}
