#include "support/around.h"

#include "base/memory.h"
#include "plot/format/format.h"

#include <check.h>
#include <string.h>

void around_add(struct plot *plot, const char *lines)
{
	struct text text = TEXT_EMPTY;
	struct plot read;
	struct diag d;

	plot_init(&read);
	format_write(plot, &text);
	text_add(&text, lines);
	ck_assert_msg(format_read(text.bytes, text.length, &read, &d),
		"%d:%d: found %s, expected %s", d.line, d.column, d.found, d.expected);
	text_fini(&text);
	plot_fini(plot);
	*plot = read;
}

/* ---- At random ------------------------------------------------------------------------------- */

/* To another grid point, level or upright of this one. */
static struct place next_point(const struct plot *plot, struct random *random, struct place at)
{
	int columns = plot->ground.columns, rows = plot->ground.rows;
	struct place to = at;

	while (place_equal(to, at)) {
		to = at;
		if (random_below(random, 2))
			to.x = random_between(random, 0, columns);
		else
			to.y = random_between(random, 0, rows);
	}
	return to;
}

static void service_at_random(struct plot *plot, struct random *random)
{
	enum service_kind kind = (enum service_kind)random_below(random, SERVICE_KINDS);
	struct service *service = services_add(&plot->details.around.services, kind,
		random_below(random, 3) == 0, memory_string(service_words[kind]));
	struct route *route = routes_add(&service->routes);
	struct place at = { random_between(random, 0, plot->ground.columns),
		random_between(random, 0, plot->ground.rows) };

	route_add(route, at);
	for (int legs = random_between(random, 1, 4); legs > 0; legs--) {
		at = next_point(plot, random, at);
		route_add(route, at);
	}
}

static void keep_at_random(struct plot *plot, struct random *random)
{
	struct obstacle *keep = obstacles_add(&plot->details.around.kept, memory_string("Kept"));
	int x = random_between(random, 0, plot->ground.columns);
	int y = random_between(random, 0, plot->ground.rows);

	if (random_below(random, 2)) {
		keep->at = (struct place){ x, y };
		keep->radius = random_between(random, 1, 60) * NM_PER_INCH;
	} else {
		keep->cells = (struct rectangle){ x - random_below(random, 4),
			y - random_below(random, 4), x + random_below(random, 4),
			y + random_below(random, 4) };
	}
}

void services_at_random(struct plot *plot, struct random *random)
{
	for (int i = random_between(random, 1, 3); i > 0; i--)
		service_at_random(plot, random);
	for (int i = random_below(random, 3); i > 0; i--)
		keep_at_random(plot, random);
}
