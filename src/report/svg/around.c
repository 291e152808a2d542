#include "report/svg/around.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/svg/beyond.h"
#include "report/svg/drip_marks.h"
#include "report/svg/type.h"

#include <stdlib.h>

static const nm SIGN = 12 * NM_PER_MM / 10; /* from the middle of a sign to its end */

static void open_field(const struct sheet *sheet)
{
	ink_open(sheet->report.out, "clip-path=\"url(#field)\"");
}

/* In the middle of what is seen of it, else anywhere there; counted where there is no room, and
 * where nothing is seen. */
static void name_thing(struct sheet *sheet, const char *words, struct box box)
{
	struct box seen = box_common(box, sheet->room.within);
	struct at middle = box_middle(seen);
	const struct type level = { .size = TYPE_SMALL };
	const struct type upright = { .size = TYPE_SMALL, .is_upright = true };
	bool is_high = box_height(seen) > 2 * box_width(seen);

	if (seen.right <= seen.left || seen.bottom <= seen.top ||
	    (!(is_high && sheet_try(sheet, words, middle, upright)) &&
	    !sheet_try(sheet, words, middle, level) &&
	    !sheet_try_beside(sheet, words, middle, SIGN, level) &&
	    !sheet_try_beside(sheet, words, middle, SIGN, upright)))
		sheet->left_out[LEFT_AROUND]++;
}

/* ---- Houses and what is kept ----------------------------------------------------------------- */

static struct box obstacle_box(const struct sheet *sheet, const struct obstacle *thing)
{
	struct at from, to, middle = sheet_point(sheet, thing->at);
	nm across = 2 * scaled(thing->radius, sheet->layout->scale);

	if (thing->radius > 0)
		return box_around(middle, across, across);
	from = sheet_point(sheet, (struct place){ thing->cells.left, thing->cells.top });
	to = sheet_point(sheet, (struct place){ thing->cells.right + 1, thing->cells.bottom + 1 });
	return (struct box){ from.x, from.y, to.x, to.y };
}

static void draw_obstacles(struct sheet *sheet, const struct obstacles *things, enum pen pen)
{
	open_field(sheet);
	sheet_pen(sheet, pen);
	for (size_t i = 0; i < things->count && !stop_asked(); i++) {
		const struct obstacle *thing = &things->items[i];
		struct box box = obstacle_box(sheet, thing);

		if (thing->radius > 0)
			ink_circle(sheet->report.out, box_middle(box), box_width(box) / 2);
		else
			ink_box(sheet->report.out, box);
	}
	sheet_lift(sheet);
	ink_close(sheet->report.out);
}

void around_draw_houses(struct sheet *sheet)
{
	draw_obstacles(sheet, &sheet->report.plot->details.around.houses, PEN_HOUSE);
}

static void name_obstacles(struct sheet *sheet, const struct obstacles *things, const char *what)
{
	const struct report *report = &sheet->report;

	sheet_pen(sheet, PEN_WORDS);
	for (size_t i = 0; i < things->count && !stop_asked(); i++) {
		const struct obstacle *thing = &things->items[i];

		name_thing(sheet, thing->radius == 0 ? say(report, "%s: %s", what,
			beyond_thing(report, thing)) :
			say(report, "%s: %s, radius %s", what, thing->name,
			plain_length(report, thing->radius)), obstacle_box(sheet, thing));
		arena_clear(report->words);
	}
	sheet_lift(sheet);
}

/* ---- Services -------------------------------------------------------------------------------- */

void around_pen(const struct sheet *sheet, const struct service *service)
{
	static const enum pen pens[SERVICE_KINDS] = { [SERVICE_WATER] = PEN_WATER,
		[SERVICE_GAS] = PEN_GAS, [SERVICE_POWER] = PEN_POWER,
		[SERVICE_TELECOM] = PEN_TELECOM, [SERVICE_DRAIN] = PEN_DRAIN,
		[SERVICE_OTHER] = PEN_OTHER };

	sheet_pen(sheet, pens[service->kind]);
	if (service->is_to_lay)
		ink_open(sheet->report.out, "stroke-dasharray=\"2.4,1.2\"");
}

void around_lift(const struct sheet *sheet, const struct service *service)
{
	if (service->is_to_lay)
		ink_close(sheet->report.out);
	sheet_lift(sheet);
}

/* "water, existing, down 30 in". */
static const char *service_line_words(const struct report *report, const struct service *service)
{
	const struct value *depth = block_value(&service->block, SERVICE_DEPTH);

	return say(report, "%s, %s%s%s", service_words[service->kind],
		service->is_to_lay ? "to lay" : "existing", depth->set ? ", down " : "",
		depth->set ? plain_inches(report, depth->as.length) : "");
}

static void draw_route(struct sheet *sheet, const struct route *route)
{
	struct at *points = memory_new((size_t)route->count, sizeof *points);

	for (int i = 0; i < route->count; i++)
		points[i] = sheet_point(sheet, route->points[i]);
	ink_points(sheet->report.out, points, route->count, false);
	free(points);
}

/* Along a leg of the route that is as long as the words, at three places of each: on the line, for
 * it to be read with it. */
static bool try_along(struct sheet *sheet, const struct route *route, const char *words)
{
	static const int quarters[] = { 2, 1, 3 };

	for (int i = 0; i + 1 < route->count; i++) {
		struct at a = sheet_point(sheet, route->points[i]);
		struct at b = sheet_point(sheet, route->points[i + 1]);
		struct type type = { .size = TYPE_SMALL, .is_upright = a.x == b.x };

		if (type_width(words, type) > nm_most(llabs(b.x - a.x), llabs(b.y - a.y)))
			continue;
		for (int j = 0; j < 3; j++)
			if (sheet_try(sheet, words, (struct at){
				a.x + quarters[j] * (b.x - a.x) / 4,
				a.y + quarters[j] * (b.y - a.y) / 4 }, type))
				return true;
	}
	return false;
}

static bool try_at_start(struct sheet *sheet, const struct route *route, const char *words)
{
	return sheet_try_beside(sheet, words, sheet_point(sheet, route->points[0]), SIGN,
		(struct type){ .size = TYPE_SMALL });
}

static void name_route(struct sheet *sheet, const struct service *service,
	const struct route *route)
{
	const char *some = service_line_words(&sheet->report, service);
	const char *all = say(&sheet->report, "%s: %s", some, service->name);
	const char *kind = service_words[service->kind];

	if (!try_along(sheet, route, all) && !try_along(sheet, route, some) &&
	    !try_along(sheet, route, kind) && !try_at_start(sheet, route, all) &&
	    !try_at_start(sheet, route, kind))
		sheet->left_out[LEFT_SERVICES]++;
}

static void draw_service(struct sheet *sheet, const struct service *service)
{
	around_pen(sheet, service);
	for (size_t i = 0; i < service->routes.count; i++)
		draw_route(sheet, &service->routes.items[i]);
	around_lift(sheet, service);
}

static void name_services(struct sheet *sheet, const struct services *services)
{
	sheet_pen(sheet, PEN_WORDS);
	for (size_t i = 0; i < services->count; i++)
		for (size_t j = 0; j < services->items[i].routes.count && !stop_asked(); j++) {
			name_route(sheet, &services->items[i], &services->items[i].routes.items[j]);
			arena_clear(sheet->report.words);
		}
	sheet_lift(sheet);
}

/* ---- Single points --------------------------------------------------------------------------- */

void around_drop_sign(const struct sheet *sheet, struct at tip, nm half)
{
	const struct at points[] = { { tip.x - half, tip.y - 2 * half }, tip,
		{ tip.x + half, tip.y - 2 * half } };

	sheet_pen(sheet, PEN_DROP);
	ink_points(sheet->report.out, points, 3, true);
	sheet_lift(sheet);
}

static void draw_drop(struct sheet *sheet, struct place drop)
{
	struct at at = sheet_point(sheet, drop);

	around_drop_sign(sheet, at, SIGN);
	room_take(&sheet->room, (struct box){ at.x - SIGN, at.y - 2 * SIGN, at.x + SIGN, at.y });
}

static void draw_ties(struct sheet *sheet, const struct ties *ties)
{
	sheet_pen(sheet, PEN_TIE);
	for (size_t i = 0; i < ties->count; i++) {
		struct at at = sheet_point(sheet, ties->items[i].at);

		ink_circle(sheet->report.out, at, SIGN / 2);
		room_take(&sheet->room, box_around(at, SIGN, SIGN));
	}
	sheet_lift(sheet);
}

/* Near a point, or farther off. */
static void name_point(struct sheet *sheet, const char *words, struct place point)
{
	for (int far = 1; far <= 6; far++)
		if (sheet_try_beside(sheet, words, sheet_point(sheet, point), far * SIGN,
			(struct type){ .size = TYPE_SMALL }))
			return;
	sheet->left_out[LEFT_AROUND]++;
}

static void name_ties(struct sheet *sheet, const struct ties *ties)
{
	sheet_pen(sheet, PEN_WORDS);
	for (size_t i = 0; i < ties->count && !stop_asked(); i++) {
		const struct tie *tie = &ties->items[i];

		name_point(sheet, say(&sheet->report, "%s to %s",
			plain_length(&sheet->report, tie->length), tie->name), tie->at);
		arena_clear(sheet->report.words);
	}
	sheet_lift(sheet);
}

/* ---- Watering -------------------------------------------------------------------------------- */

void around_tap_sign(const struct sheet *sheet, struct at at, nm half)
{
	sheet_pen(sheet, PEN_TAP);
	ink_circle(sheet->report.out, at, half);
	sheet_lift(sheet);
}

static void draw_tap(struct sheet *sheet, struct place tap)
{
	struct at at = sheet_point(sheet, tap);

	around_tap_sign(sheet, at, SIGN);
	room_take(&sheet->room, box_around(at, 2 * SIGN, 2 * SIGN));
}

/* ---- All of it ------------------------------------------------------------------------------- */

void around_draw(struct sheet *sheet)
{
	const struct surroundings *around = &sheet->report.plot->details.around;

	if (around->shades.count > 0)
		draw_obstacles(sheet, &around->shades, PEN_SHADE);
	draw_obstacles(sheet, &around->kept, PEN_KEEP);
	for (size_t i = 0; i < around->services.count && !stop_asked(); i++)
		draw_service(sheet, &around->services.items[i]);
	drip_marks_draw(sheet);
	draw_ties(sheet, &around->ties);
	if (around->has_tap)
		draw_tap(sheet, around->tap);
	if (around->has_drop)
		draw_drop(sheet, around->drop);
}

void around_write_names(struct sheet *sheet)
{
	const struct surroundings *around = &sheet->report.plot->details.around;

	name_services(sheet, &around->services);
	name_obstacles(sheet, &around->kept, "keep");
	name_obstacles(sheet, &around->houses, "house");
	if (around->shades.count > 0)
		name_obstacles(sheet, &around->shades, "shade");
	name_ties(sheet, &around->ties);
	if (!around->has_drop && !around->has_tap)
		return;
	sheet_pen(sheet, PEN_WORDS);
	if (around->has_drop)
		name_point(sheet, "deliveries", around->drop);
	if (around->has_tap)
		name_point(sheet, "tap", around->tap);
	sheet_lift(sheet);
}
