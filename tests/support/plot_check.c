#include "support/plot_check.h"
#include "plot/format/format.h"

#include <assert.h>
#include <stdio.h>
#include <string.h>

bool plot_equal(const struct plot *a, const struct plot *b)
{
	size_t cells = (size_t)a->ground.columns * (size_t)a->ground.rows;

	return a->ground.columns == b->ground.columns && a->ground.rows == b->ground.rows &&
		(cells == 0 || memcmp(a->ground.cells, b->ground.cells, cells) == 0) &&
		details_equal(&a->details, &b->details);
}

/* Holds where the writer writes what the reader takes, as the same value. */
static void value_check(const struct value_rule *rule, const struct value *value, enum units units)
{
	struct text text = TEXT_EMPTY;
	struct value again = { .set = false };
	struct diag d;

	value_write(&text, rule, value, units);
	struct scan s = scan_start(text.bytes, text.length, 1);
	bool is_read = value_scan(&s, rule, units, &again, &d);
	assert(is_read && scan_is_done(&s) && value_equal(rule->kind, value, &again));
	(void)is_read;
	value_fini(rule->kind, &again);
	text_fini(&text);
}

static void text_check(const char *text, int64_t most, enum units units)
{
	const struct value_rule rule = { .kind = VALUE_TEXT, .least = 1, .most = most };

	value_check(&rule, &(struct value){ .set = true, .as.text = text }, units);
}

static void block_check(const struct block *block, enum units units)
{
	for (enum attribute a = block_first(block->kind); a <= block_last(block->kind); a++)
		if (block_value(block, a)->set)
			value_check(&attribute_row(a)->rule, block_value(block, a), units);
	for (size_t i = 0; i < block->notes.count; i++)
		text_check(block->notes.texts[i], NOTE_MOST, units);
}

static void head_check(const struct plot *plot)
{
	const struct block *head = &plot->details.head;
	const struct value *axis = block_value(head, HEAD_AXIS);

	for (enum attribute a = block_first(BLOCK_HEAD); a <= block_last(BLOCK_HEAD); a++)
		assert(!attribute_row(a)->required || block_value(head, a)->set);
	assert(!axis->set || (axis->as.place.x >= 1 && axis->as.place.y >= 1 &&
		axis->as.place.x < 2 * plot->ground.columns &&
		axis->as.place.y < 2 * plot->ground.rows));
	block_check(head, plot_units(plot));
	block_check(&plot->details.allow, plot_units(plot));
}

static void legend_check(const struct plot *plot)
{
	for (size_t i = 0; i < plot->details.legend_count; i++) {
		const struct entry *entry = &plot->details.legend[i];

		assert(class_takes_letter(entry->class, entry->letter));
		assert(plot_entry(plot, entry->letter) == entry);
		assert(entry->block.kind == class_block(entry->class));
		text_check(entry->name, NAME_MOST, plot_units(plot));
		block_check(&entry->block, plot_units(plot));
	}
}

static void leg_check(const struct ground *ground, struct leg leg)
{
	struct leg f = leg_forward(leg);

	assert(leg_is_straight(leg));
	assert(f.from.x >= 0 && f.from.y >= 0);
	assert(f.to.x <= ground->columns && f.to.y <= ground->rows);
	(void)ground, (void)f;
}

static void fence_check(const struct plot *plot, const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;
	const struct legs gates = fence->gates;

	assert(fence->block.kind == BLOCK_FENCE);
	text_check(fence->name, NAME_MOST, plot_units(plot));
	block_check(&fence->block, plot_units(plot));
	for (size_t i = 0; i < fence->run_count; i++)
		assert(fence->runs[i].count >= ROUTE_POINTS_LEAST &&
			fence->runs[i].count <= ROUTE_POINTS_MOST);
	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count; i++)
		leg_check(&plot->ground, legs.items[i]);
	for (size_t i = 0; i < gates.count; i++)
		leg_check(&plot->ground, gates.items[i]);
	assert(legs_first_overlap(&legs) == legs.count);
	assert(legs_first_overlap(&gates) == gates.count);
	assert(fence_first_stray(fence) == gates.count);
	legs_fini(&legs);
}

/* Rates have no notes: nothing could be read of them. */
static void work_check(const struct plot *plot)
{
	const struct details *details = &plot->details;

	assert(details->rates.kind == BLOCK_RATES);
	assert(details->rates.notes.count == 0);
	block_check(&details->rates, plot_units(plot));
	for (size_t i = 0; i < details->extra_count; i++) {
		const struct amount *amount = &details->extras[i].amount;

		text_check(details->extras[i].name, NAME_MOST, plot_units(plot));
		assert(amount_quantity(amount->unit) == QUANTITY_GOODS);
		assert(amount->millionths >= extra_rule.least);
		assert(amount->millionths <= extra_rule.most);
		(void)amount;
	}
}

static void point_check(const struct ground *ground, struct place point)
{
	assert(point.x >= 0 && point.y >= 0);
	assert(point.x <= ground->columns && point.y <= ground->rows);
	(void)ground, (void)point;
}

static void length_check(const struct value_rule *rule, nm length, enum units units)
{
	value_check(rule, &(struct value){ .set = true, .as.length = length }, units);
}

static void service_check(const struct plot *plot, const struct service *service)
{
	assert(service->block.kind == BLOCK_SERVICE);
	assert(service->kind <= SERVICE_OTHER);
	text_check(service->name, NAME_MOST, plot_units(plot));
	block_check(&service->block, plot_units(plot));
	for (size_t i = 0; i < service->routes.count; i++) {
		const struct route *route = &service->routes.items[i];

		assert(route->count >= ROUTE_POINTS_LEAST);
		assert(route->count <= ROUTE_POINTS_MOST);
		for (int j = 1; j < route->count; j++)
			leg_check(&plot->ground,
				(struct leg){ route->points[j - 1], route->points[j] });
	}
}

static void plants_check(const struct plot *plot)
{
	for (size_t i = 0; i < plot->details.plants.count; i++) {
		struct plant *plant = &plot->details.plants.items[i];

		assert(plant->block.kind == BLOCK_PLANT);
		assert(plant_takes_letter(plant->letter) && !plot_entry(plot, plant->letter));
		assert(plants_find(&plot->details.plants, plant->letter) == plant);
		text_check(plant->name, NAME_MOST, plot_units(plot));
		block_check(&plant->block, plot_units(plot));
		for (size_t j = 0; j < plant->specimen_count; j++) {
			struct place at = plant->specimens[j];

			assert(ground_holds(&plot->ground, at.x, at.y));
			assert(plant_specimen(plant, at) == j);
			(void)at;
		}
		for (size_t j = 0; j < plant->drift_count; j++) {
			const struct drift *drift = &plant->drifts[j];

			assert(drift->band <= BAND_BACK);
			assert(drift->letter ? plot_class_of(plot, drift->letter) == CLASS_BED :
				ground_holds(&plot->ground, drift->at.x, drift->at.y));
			(void)drift;
		}
	}
}

static void obstacles_check(const struct plot *plot, const struct obstacles *obstacles)
{
	for (size_t i = 0; i < obstacles->count; i++) {
		const struct obstacle *obstacle = &obstacles->items[i];
		const struct rectangle *r = &obstacle->cells;

		text_check(obstacle->name, NAME_MOST, plot_units(plot));
		for (size_t j = 0; j < obstacle->notes.count; j++)
			text_check(obstacle->notes.texts[j], NOTE_MOST, plot_units(plot));
		if (obstacle->height)
			length_check(&height_rule, obstacle->height, plot_units(plot));
		if (obstacle->radius) {
			length_check(&radius_rule, obstacle->radius, plot_units(plot));
			point_check(&plot->ground, obstacle->at);
			continue;
		}
		assert(-CORNER_MOST <= r->left && r->left <= r->right && r->right < CORNER_MOST);
		assert(-CORNER_MOST <= r->top && r->top <= r->bottom && r->bottom < CORNER_MOST);
		(void)r;
	}
}

static void levels_check(const struct plot *plot)
{
	const struct levels *levels = &plot->details.levels;

	if (!levels->step)
		return;
	length_check(&step_rule, levels->step, plot_units(plot));
	assert(levels->columns <= LEVELS_SIDE_MOST && levels->rows <= LEVELS_SIDE_MOST);
	assert(levels->columns ==
		levels_count(plot->ground.columns, plot_cell(plot), levels->step));
	assert(levels->rows == levels_count(plot->ground.rows, plot_cell(plot), levels->step));
	for (int i = 0; i < levels->columns * levels->rows; i++)
		length_check(&drop_rule, levels->drops[i], plot_units(plot));
}

static void around_check(const struct plot *plot)
{
	const struct surroundings *around = &plot->details.around;
	const struct finish *finish = &plot->details.finish;

	for (size_t i = 0; i < around->services.count; i++)
		service_check(plot, &around->services.items[i]);
	obstacles_check(plot, &around->houses);
	obstacles_check(plot, &around->shades);
	obstacles_check(plot, &around->kept);
	for (size_t i = 0; i < around->houses.count; i++)
		assert(around->houses.items[i].radius == 0);
	for (size_t i = 0; i < around->shades.count; i++)
		assert(around->shades.items[i].radius == 0 && around->shades.items[i].height > 0);
	for (size_t i = 0; i < around->kept.count; i++)
		assert(around->kept.items[i].height == 0);
	for (size_t i = 0; i < around->ties.count; i++) {
		point_check(&plot->ground, around->ties.items[i].at);
		text_check(around->ties.items[i].name, NAME_MOST, plot_units(plot));
		length_check(&tie_rule, around->ties.items[i].length, plot_units(plot));
	}
	if (around->has_drop)
		point_check(&plot->ground, around->drop);
	if (around->has_tap)
		point_check(&plot->ground, around->tap);
	levels_check(plot);
	if (finish->has_level) {
		point_check(&plot->ground, finish->at);
		length_check(&drop_rule, finish->drop, plot_units(plot));
	}
	assert(!finish->has_fall || !finish->is_away || finish->bearing == 0);
}

static void names_check(const struct plot *plot)
{
	const struct names *names = &plot->details.names;

	for (size_t i = 0; i < names->count; i++) {
		assert(ground_holds(&plot->ground, names->items[i].at.x, names->items[i].at.y));
		text_check(names->items[i].text, NAME_MOST, plot_units(plot));
	}
}

void plot_check(const struct plot *plot)
{
	const struct ground *ground = &plot->ground;
	size_t cells = (size_t)ground->columns * (size_t)ground->rows;

	assert(ground->columns >= 1 && ground->columns <= SIDE_MOST);
	assert(ground->rows >= 1 && ground->rows <= SIDE_MOST);
	head_check(plot);
	legend_check(plot);
	for (size_t i = 0; i < plot->details.fence_count; i++)
		fence_check(plot, &plot->details.fences[i]);
	plants_check(plot);
	around_check(plot);
	names_check(plot);
	work_check(plot);
	for (size_t i = 0; i < cells; i++)
		assert(ground->cells[i] == OPEN_GROUND || plot_entry(plot, ground->cells[i]));
}

void plot_check_later(const struct plot *plot, const char *expected)
{
	struct text text = TEXT_EMPTY;
	const char *later;

	plot_check(plot);
	format_write_details(plot, &text);
	later = strstr(strstr(text.bytes, "\nground ") + 1, "\n") + 1;
	later = *later ? later + 1 : later;
	if (strcmp(later, expected) != 0)
		fprintf(stderr, "behind the ground:\n%s\nexpected:\n%s\n", later, expected);
	assert(strcmp(later, expected) == 0);
	text_fini(&text);
}
