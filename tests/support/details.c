#include "support/details.h"

#include "base/memory.h"

#include <assert.h>
#include <string.h>

char *text_at_random(struct random *random, int least, int most)
{
	static const char *const characters[] = { "a", "Z", "0", " ", "\"", "\\", "'", ",", ".",
		"\xC3\xA9", "\xCC\x81", "\xE2\x82\xAC", "\xE4\xB8\xAD", "\xF0\x9F\x8C\xB1", "#",
		"%s" };
	enum { ALL = sizeof characters / sizeof *characters - 1 }; /* without the last, of two */
	int length = random_below(random, 4) ? least : most;
	struct text text = TEXT_EMPTY;

	if (random_below(random, 3))
		length = random_between(random, least, most < least + 30 ? most : least + 30);
	for (int i = 0; i < length; i++) {
		bool is_two = length - i >= 2 && random_below(random, 30) == 0;

		text_add(&text, characters[is_two ? ALL : random_below(random, ALL)]);
		i += is_two;
	}
	return text_take(&text);
}

/* From least to most, in steps that people, or only a computer, would choose. */
static int64_t number_at_random(struct random *random, const struct value_rule *rule)
{
	static const int64_t steps[] = { 1, 1000, NM_PER_64TH, MILLION, NM_PER_INCH, NM_PER_FOOT,
		NM_PER_M };
	int64_t step = steps[random_below(random, (int)(sizeof steps / sizeof *steps))];
	int64_t span = rule->most - rule->least, number;

	if (random_below(random, 6) == 0)
		return random_below(random, 2) ? rule->least : rule->most;
	number = rule->least + (int64_t)(random_next(random) % (uint64_t)(span + 1));
	number -= number % step;
	return number < rule->least ? rule->least : number;
}

static struct size size_at_random(struct random *random, const struct value_rule *rule)
{
	nm a = number_at_random(random, rule), b = number_at_random(random, rule);

	return (struct size){ a > b ? a : b, a > b ? b : a, number_at_random(random, rule) };
}

static void mix_name(char *name, struct random *random, int part)
{
	static const char *const words[] = { "topsoil", "a", "sharp-sand", "compost-of-leaves",
		"z-z-z" };

	/* The last letter keeps the names apart. */
	strcpy(name, words[random_below(random, (int)(sizeof words / sizeof *words))]);
	strncat(name, &"abcdefgh"[part], 1);
}

static struct mix *mix_at_random(struct random *random)
{
	struct mix *mix = memory_new(1, sizeof *mix);
	const struct value_rule share = { .least = 1, .most = MILLION };

	mix->count = random_between(random, 1, MIX_PARTS_MOST);
	for (int i = 0; i < mix->count; i++) {
		mix_name(mix->parts[i].name, random, i);
		mix->parts[i].thousandths = number_at_random(random, &share);
	}
	return mix;
}

struct value value_at_random(struct random *random, enum attribute attribute,
	const struct ground *ground)
{
	const struct value_rule *rule = &attribute_row(attribute)->rule;
	struct value value = { .set = true };
	int words = 0;

	switch (rule->kind) {
	case VALUE_TEXT:
		value.as.text = text_at_random(random, (int)rule->least, (int)rule->most);
		break;
	case VALUE_LENGTH:
		value.as.length = number_at_random(random, rule);
		break;
	case VALUE_COUNT:
	case VALUE_DECIMAL:
	case VALUE_PERCENT:
		value.as.number = number_at_random(random, rule);
		break;
	case VALUE_CHOICE:
		while (rule->words[words])
			words++;
		value.as.number = random_below(random, words);
		break;
	case VALUE_SIZE:
		value.as.size = size_at_random(random, rule);
		break;
	case VALUE_CAP:
		if (random_below(random, 3))
			value.as.size = size_at_random(random, rule);
		break;
	case VALUE_AMOUNT:
		value.as.amount.millionths = number_at_random(random, rule);
		do
			value.as.amount.unit = (enum amount_unit)random_below(random, AMOUNT_UNITS);
		while (amount_quantity(value.as.amount.unit) != rule->quantity);
		break;
	case VALUE_MIX:
		value.as.mix = mix_at_random(random);
		break;
	case VALUE_PLACE:
		value.as.place = (struct place){ random_between(random, 1, 2 * ground->columns - 1),
			random_between(random, 1, 2 * ground->rows - 1) };
		break;
	case VALUE_SIDES:
		value.as.number = random_below(random, 16);
		break;
	}
	return value;
}

static void block_at_random(struct block *block, struct random *random, const struct ground *ground)
{
	int chance = random_between(random, 1, 4);

	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		if (attribute_row(a)->required || random_below(random, chance) == 0)
			block_set(block, a, value_at_random(random, a, ground));
	for (int notes = random_below(random, 4); notes > 1; notes--)
		notes_add(&block->notes, text_at_random(random, 1, NOTE_MOST));
}

static struct place point_at_random(struct random *random, const struct ground *ground)
{
	return (struct place){ random_between(random, 0, ground->columns),
		random_between(random, 0, ground->rows) };
}

/* Goes on straight, level or upright, as long as it lies over nothing of the fence. */
static void run_at_random(struct fence *fence, struct legs *legs, struct random *random,
	const struct ground *ground)
{
	struct place at = point_at_random(random, ground);
	struct route *run = NULL;

	for (int i = random_between(random, 1, ROUTE_POINTS_MOST - 1); i > 0; i--) {
		struct place to = point_at_random(random, ground);

		if (random_below(random, 2))
			to.x = at.x;
		else
			to.y = at.y;
		if (!leg_is_straight((struct leg){ at, to }))
			continue;
		legs_add(legs, (struct leg){ at, to });
		if (legs_first_overlap(legs) < legs->count) {
			legs->count--;
			continue;
		}
		if (!run)
			route_add(run = fence_add_run(fence), at);
		route_add(run, to);
		at = to;
	}
}

static void gates_at_random(struct fence *fence, const struct legs *legs, struct random *random)
{
	for (size_t i = 0; i < legs->count; i++) {
		struct leg leg = leg_forward(legs->items[i]);
		int length = leg_length(leg), start = random_below(random, length), end;

		if (random_below(random, 2))
			continue;
		end = random_between(random, start + 1, length);
		bool is_upright = leg_is_upright(leg);
		struct place from = { leg.from.x + (is_upright ? 0 : start),
			leg.from.y + (is_upright ? start : 0) };
		struct place to = { leg.from.x + (is_upright ? 0 : end),
			leg.from.y + (is_upright ? end : 0) };

		legs_add(&fence->gates, random_below(random, 2) ? (struct leg){ from, to } :
			(struct leg){ to, from });
	}
}

void fence_at_random(struct plot *plot, struct random *random)
{
	struct fence *fence = details_add_fence(&plot->details,
		text_at_random(random, 1, NAME_MOST));
	struct legs legs = LEGS_EMPTY;

	block_at_random(&fence->block, random, &plot->ground);
	for (int i = random_below(random, 4); i > 0; i--)
		run_at_random(fence, &legs, random, &plot->ground);
	gates_at_random(fence, &legs, random);
	legs_fini(&legs);
}

static void extra_at_random(struct details *details, struct random *random)
{
	struct amount amount = { .millionths = number_at_random(random, &extra_rule) };

	do
		amount.unit = (enum amount_unit)random_below(random, AMOUNT_UNITS);
	while (amount_quantity(amount.unit) != QUANTITY_GOODS);
	details_add_extra(details, text_at_random(random, 1, NAME_MOST), amount);
}

/* A route wherever it likes: services may lie over themselves. */
static void route_at_random(struct routes *routes, struct random *random,
	const struct ground *ground)
{
	struct route *route = routes_add(routes);
	int points = random_between(random, ROUTE_POINTS_LEAST, ROUTE_POINTS_MOST);

	route_add(route, point_at_random(random, ground));
	while (route->count < points) {
		struct place at = route->points[route->count - 1];
		struct place to = point_at_random(random, ground);

		if (random_below(random, 2))
			to.x = at.x;
		else
			to.y = at.y;
		if (leg_is_straight((struct leg){ at, to }))
			route_add(route, to);
	}
}

static void service_at_random(struct plot *plot, struct random *random)
{
	struct service *service = services_add(&plot->details.around.services,
		(enum service_kind)random_below(random, SERVICE_KINDS),
		random_below(random, 2), text_at_random(random, 1, NAME_MOST));

	block_at_random(&service->block, random, &plot->ground);
	for (int i = random_below(random, 3); i > 0; i--)
		route_at_random(&service->routes, random, &plot->ground);
}

static struct place cell_at_random(struct random *random, const struct ground *ground)
{
	return (struct place){ random_below(random, ground->columns),
		random_below(random, ground->rows) };
}

/* Of the beds of a letter where chance finds one, else of the bed at a cell. */
static struct drift drift_at_random(const struct plot *plot, struct random *random)
{
	const struct details *details = &plot->details;
	struct drift drift = { .band = (enum band)random_below(random, BANDS) };
	const struct entry *entry = &details->legend[random_below(random,
		(int)details->legend_count)];

	if (entry->class == CLASS_BED)
		drift.letter = entry->letter;
	else
		drift.at = cell_at_random(random, &plot->ground);
	return drift;
}

void plants_at_random(struct plot *plot, struct random *random)
{
	struct plants *plants = &plot->details.plants;

	for (int i = random_below(random, 5); i > 1; i--) {
		char letter = (char)('a' + random_below(random, 26));
		struct plant *plant;

		if (plot_entry(plot, letter) || plants_find(plants, letter))
			continue;
		plant = plants_add(plants, letter, text_at_random(random, 1, NAME_MOST));
		block_at_random(&plant->block, random, &plot->ground);
		for (int j = random_below(random, 8); j > 0; j--) {
			struct place at = cell_at_random(random, &plot->ground);

			if (plant_specimen(plant, at) == plant->specimen_count)
				plant_add_specimen(plant, at);
		}
		for (int j = random_below(random, 4); j > 0; j--)
			plant_add_drift(plant, drift_at_random(plot, random));
	}
}

/* Most rectangles near the plan, some as far off as they may be. */
static int corner_at_random(struct random *random, int least, int most)
{
	bool is_far = random_below(random, 8) == 0;

	if (is_far || least > 40)
		return random_between(random, least, most);
	return random_between(random, least > -20 ? least : -20, 60);
}

enum obstacle_kind { OBSTACLE_HOUSE, OBSTACLE_SHADE, OBSTACLE_KEPT };

static void obstacle_at_random(struct obstacles *obstacles, struct random *random,
	const struct ground *ground, enum obstacle_kind kind)
{
	struct obstacle *obstacle = obstacles_add(obstacles, text_at_random(random, 1, NAME_MOST));
	struct rectangle *r = &obstacle->cells;

	for (int notes = random_below(random, 4); notes > 2; notes--)
		notes_add(&obstacle->notes, text_at_random(random, 1, NOTE_MOST));
	if (kind == OBSTACLE_SHADE || (kind == OBSTACLE_HOUSE && random_below(random, 2)))
		obstacle->height = number_at_random(random, &height_rule);
	if (kind == OBSTACLE_KEPT && random_below(random, 2)) {
		obstacle->radius = number_at_random(random, &radius_rule);
		obstacle->at = point_at_random(random, ground);
		return;
	}
	r->left = corner_at_random(random, -CORNER_MOST, CORNER_MOST - 1);
	r->top = corner_at_random(random, -CORNER_MOST, CORNER_MOST - 1);
	r->right = corner_at_random(random, r->left, CORNER_MOST - 1);
	r->bottom = corner_at_random(random, r->top, CORNER_MOST - 1);
}

/* Steps of about a cell up to more than the plan. */
static void levels_at_random(struct plot *plot, struct random *random)
{
	nm cell = plot_cell(plot), step = cell * random_between(random, 1, 50) / 4 + NM_PER_INCH;
	struct levels *levels = &plot->details.levels;
	int64_t columns = levels_count(plot->ground.columns, cell, step);
	int64_t rows = levels_count(plot->ground.rows, cell, step);

	if (columns > LEVELS_SIDE_MOST || rows > LEVELS_SIDE_MOST)
		return;
	levels_fini(levels);
	levels_init(levels, step, (int)columns, (int)rows);
	for (int i = 0; i < levels->columns * levels->rows; i++)
		levels->drops[i] = number_at_random(random, &drop_rule);
}

static void finish_at_random(struct plot *plot, struct random *random)
{
	struct finish *finish = &plot->details.finish;

	*finish = (struct finish){ .has_level = random_below(random, 2),
		.has_fall = random_below(random, 2), .at = point_at_random(random, &plot->ground),
		.drop = number_at_random(random, &drop_rule), .is_away = random_below(random, 2),
		.percent = number_at_random(random, &fall_rule) };
	if (!finish->is_away)
		finish->bearing = number_at_random(random, &bearing_rule);
}

void around_at_random(struct plot *plot, struct random *random)
{
	struct surroundings *around = &plot->details.around;

	for (int i = random_below(random, 4); i > 1; i--)
		service_at_random(plot, random);
	for (int i = random_below(random, 4); i > 2; i--)
		obstacle_at_random(&around->houses, random, &plot->ground, OBSTACLE_HOUSE);
	for (int i = random_below(random, 4); i > 2; i--)
		obstacle_at_random(&around->shades, random, &plot->ground, OBSTACLE_SHADE);
	for (int i = random_below(random, 5); i > 1; i--)
		obstacle_at_random(&around->kept, random, &plot->ground, OBSTACLE_KEPT);
	for (int i = random_below(random, 6); i > 2; i--)
		ties_add(&around->ties, point_at_random(random, &plot->ground),
			text_at_random(random, 1, NAME_MOST),
			number_at_random(random, &tie_rule));
	around->has_drop = random_below(random, 2);
	around->drop = point_at_random(random, &plot->ground);
	around->has_tap = random_below(random, 2);
	around->tap = point_at_random(random, &plot->ground);
	if (random_below(random, 2))
		levels_at_random(plot, random);
	finish_at_random(plot, random);
}

static void name_at_random(struct plot *plot, struct random *random)
{
	struct place at = cell_at_random(random, &plot->ground);

	names_add(&plot->details.names, at, text_at_random(random, 1, NAME_MOST));
}

static void rates_at_random(struct block *rates, struct random *random,
	const struct ground *ground)
{
	int chance = random_between(random, 1, 4);

	for (enum attribute a = block_first(BLOCK_RATES); a <= block_last(BLOCK_RATES); a++)
		if (random_below(random, chance) == 0)
			block_set(rates, a, value_at_random(random, a, ground));
}

void details_at_random(struct plot *plot, struct random *random, int entries)
{
	struct details *details = &plot->details;

	block_at_random(&details->head, random, &plot->ground);
	if (random_below(random, 2))
		block_at_random(&details->allow, random, &plot->ground);
	for (int i = random_between(random, 1, entries); i > 0; i--) {
		enum plot_class class = (enum plot_class)random_between(random, CLASS_BED,
			CLASS_FIXTURE);
		char letter = (char)((class == CLASS_FIXTURE ? 'A' : 'a') + random_below(random,
			26));

		if (plot_entry(plot, letter))
			continue;
		block_at_random(&details_add_entry(details, class, letter,
			text_at_random(random, 1, NAME_MOST))->block, random, &plot->ground);
	}
	for (int i = random_below(random, 3); i > 0; i--)
		fence_at_random(plot, random);
	for (int i = random_below(random, 4); i > 1; i--)
		name_at_random(plot, random);
	plants_at_random(plot, random);
	around_at_random(plot, random);
	if (random_below(random, 2))
		rates_at_random(&details->rates, random, &plot->ground);
	for (int i = random_below(random, 4); i > 1; i--)
		extra_at_random(details, random);
}

void whole_plot_at_random(struct plot *plot, struct random *random, int most)
{
	plot_init(plot);
	ground_init(&plot->ground, random_between(random, 1, most),
		random_between(random, 1, most));
	details_at_random(plot, random, 52);
	for (int i = 0; i < plot->ground.columns * plot->ground.rows; i++) {
		int entry = random_between(random, -1, (int)plot->details.legend_count - 1);

		plot->ground.cells[i] = entry < 0 ? OPEN_GROUND :
			plot->details.legend[entry].letter;
	}
}
