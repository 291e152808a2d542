#include "takeoff/services/service_lines.h"
#include "base/measure.h"
#include "base/stop.h"
#include "takeoff/ground/edging.h"
#include "takeoff/services/hand_snags.h"
#include "takeoff/services/service_values.h"

#include <stdlib.h>

/* ---- Lines ----------------------------------------------------------------------------------- */

static struct legs joined_legs(const struct service *service)
{
	struct legs legs = LEGS_EMPTY;

	routes_legs(&service->routes, &legs);
	legs_join(&legs);
	return legs;
}

static enum line_owner owner_of(const struct service *service)
{
	const struct value *owner = block_value(&service->block, SERVICE_OWNER);

	return !owner->set ? LINE_OWNER_UNTOLD : owner->as.number == OWNER_PUBLIC ? LINE_PUBLIC :
		LINE_PRIVATE;
}

static void lay(struct service_line *line, const struct basis *basis, const struct zones *zones,
	const struct cover *ground, const struct legs *legs)
{
	line->width = service_trench(basis->plot, line->service);
	line->trench_depth = line->depth + block_length(&line->service->block, SERVICE_BELOW);
	line->trench = volume_of(area_of(line->length, line->width), line->trench_depth);
	line->sleeves = sleeves_find(basis, zones, ground, legs, &line->sleeve_count);
	for (int i = 0; i < line->sleeve_count; i++)
		line->sleeve_length += line->sleeves[i].length;
}

static struct service_line line_of(const struct service *service, const struct basis *basis,
	const struct zones *zones, const struct cover *ground)
{
	struct legs legs = joined_legs(service);
	struct service_line line = { .service = service, .name = service->name,
		.kind = service->kind,
		.state = service->is_to_lay ? LINE_TO_LAY : LINE_EXISTING,
		.owner = owner_of(service), .has_depth = service_has_depth(service),
		.depth = service_depth(basis->plot, service),
		.length = legs_length(&legs) * basis->survey->cell };

	if (service->is_to_lay)
		lay(&line, basis, zones, ground, &legs);
	legs_fini(&legs);
	return line;
}

/* Returns the list, for more to be filled in. */
static struct service_line *find_lines(struct service_lines *out, const struct basis *basis,
	const struct zones *zones, const struct cover *ground)
{
	const struct services *services = &basis->plot->details.around.services;
	struct service_line *list = arena_new(basis->arena, services->count, sizeof *list);

	for (size_t i = 0; i < services->count && !stop_asked(); i++) {
		list[i] = line_of(&services->items[i], basis, zones, ground);
		out->existing += list[i].state == LINE_EXISTING;
		if (list[i].state != LINE_TO_LAY)
			continue;
		out->to_lay++;
		out->laid += list[i].length;
		out->sleeves += list[i].sleeve_length;
		out->trenches += list[i].trench;
	}
	out->list = list;
	out->count = (int)services->count;
	return list;
}

/* ---- By hand --------------------------------------------------------------------------------- */

/* What is near an existing service: its legs, *count of them. The caller frees. */
static struct near_thing *things_of(const struct plot *plot, const struct service *service,
	size_t *count)
{
	nm near = block_length(&plot->details.allow, ALLOW_SERVICE_NEAR);
	struct legs legs = joined_legs(service);
	struct near_thing *things = memory_new(legs.count, sizeof *things);

	for (size_t i = 0; i < legs.count; i++)
		things[i] = near_leg(legs.items[i], plot_cell(plot), near);
	*count = legs.count;
	legs_fini(&legs);
	return things;
}

static struct hand hand_of_service(const struct hand_ground *ground, struct near_cells *cells,
	const struct service *service)
{
	size_t count;
	struct near_thing *things = things_of(ground->basis->plot, service, &count);
	struct hand hand = hand_find(ground, cells, things, count);

	free(things);
	return hand;
}

void service_lines_near(const struct plot *plot, struct near_cells *cells)
{
	const struct surroundings *around = &plot->details.around;

	for (size_t i = 0; i < around->services.count && !stop_asked(); i++) {
		const struct service *service = &around->services.items[i];
		size_t count;
		struct near_thing *things = things_of(plot, service, &count);

		for (size_t j = 0; j < count && !service->is_to_lay; j++)
			near_cells_add(cells, &things[j]);
		free(things);
	}
	for (size_t i = 0; i < around->kept.count && !stop_asked(); i++) {
		const struct near_thing thing = near_obstacle(&around->kept.items[i],
			plot_cell(plot));

		near_cells_add(cells, &thing);
	}
}

static void hand_lines(struct service_line *lines, int count, const struct hand_ground *ground,
	struct near_cells *cells)
{
	struct hand_touches touches = { NULL, 0, 0 };

	for (int i = 0; i < count && !stop_asked(); i++) {
		if (lines[i].state != LINE_EXISTING)
			continue;
		lines[i].hand = hand_of_service(ground, cells, lines[i].service);
		hand_touches_add(&touches, ground->basis->survey, &lines[i].hand);
		near_cells_clear(cells);
	}
	hand_touches_warn(&touches, ground->basis, SNAG_SERVICE_NEAR);
	hand_touches_fini(&touches);
}

static struct kept kept_of(const struct obstacle *obstacle, const struct hand_ground *ground,
	struct near_cells *cells)
{
	const struct near_thing thing = near_obstacle(obstacle, ground->basis->survey->cell);

	return (struct kept){ obstacle, obstacle->name, obstacle->radius,
		{ thing.left - thing.around, thing.top - thing.around },
		{ thing.right + thing.around, thing.bottom + thing.around },
		hand_find(ground, cells, &thing, 1) };
}

static void hand_kept(struct service_lines *out, const struct hand_ground *ground,
	struct near_cells *cells)
{
	const struct obstacles *obstacles = &ground->basis->plot->details.around.kept;
	struct kept *kept = arena_new(ground->basis->arena, obstacles->count, sizeof *kept);
	struct hand_touches touches = { NULL, 0, 0 };

	for (size_t i = 0; i < obstacles->count && !stop_asked(); i++) {
		kept[i] = kept_of(&obstacles->items[i], ground, cells);
		hand_touches_add(&touches, ground->basis->survey, &kept[i].hand);
		near_cells_clear(cells);
	}
	hand_touches_warn(&touches, ground->basis, SNAG_KEEP_DUG);
	hand_touches_fini(&touches);
	out->kept = kept;
	out->kept_count = (int)obstacles->count;
}

static void add_run(void *legs, struct leg run)
{
	legs_add(legs, run);
}

void service_lines_find(struct service_lines *out, const struct basis *basis,
	const struct work_ground *ground, const struct fences *fences)
{
	const struct surroundings *around = &basis->plot->details.around;
	struct legs edging = LEGS_EMPTY;
	struct worked worked;
	struct near_cells cells;
	const struct hand_ground by_hand = { basis, &worked, fences, &edging,
		ground->holes, ground->holes_count };
	struct service_line *list;

	*out = (struct service_lines){ .count = 0 };
	if (around->services.count + around->kept.count == 0)
		return;
	list = find_lines(out, basis, ground->zones, ground->cover);
	worked_find(&worked, basis, ground);
	edging_walk(basis, add_run, &edging);
	near_cells_begin(&cells, basis->survey);
	hand_lines(list, out->count, &by_hand, &cells);
	hand_kept(out, &by_hand, &cells);
	near_cells_end(&cells);
	legs_fini(&edging);
	arena_clear(&worked.arena);
}

/* ---- What is bought, and shown --------------------------------------------------------------- */

void service_lines_items(struct item_list *items, const struct service_lines *lines)
{
	item_add_bare(items, GOOD_SLEEVE, SECTION_OTHER, metres(lines->sleeves));
}

const struct word line_kind_words[SERVICE_KINDS] = {
	[SERVICE_WATER] = { "water", NULL, NULL }, [SERVICE_GAS] = { "gas", NULL, NULL },
	[SERVICE_POWER] = { "power", NULL, NULL }, [SERVICE_TELECOM] = { "telecom", NULL, NULL },
	[SERVICE_DRAIN] = { "drain", NULL, NULL }, [SERVICE_OTHER] = { "other", NULL, NULL },
};
const struct word line_state_words[] = {
	[LINE_EXISTING] = { "existing", "there", NULL },
	[LINE_TO_LAY] = { "to-lay", "to lay", NULL },
};
const struct word line_owner_words[] = {
	[LINE_OWNER_UNTOLD] = { "not-told", "not told", NULL },
	[LINE_PUBLIC] = { "public", NULL, NULL }, [LINE_PRIVATE] = { "private", NULL, NULL },
};

static const struct figure trench_figures[] = {
	{ "width_m", NULL, NULL, FIELD(LENGTH, service_line, width) },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, service_line, trench_depth) },
	{ "dug_m3", NULL, NULL, FIELD(VOLUME, service_line, trench) },
	{ "sleeves", NULL, NULL, FIELDS(ROWS, service_line, sleeves, sleeve_count),
		.table = &sleeve_table },
};
static const struct figure_table trench_table = FIGURE_TABLE(service_line, trench_figures);

static const struct figure line_figures[] = {
	{ "name", "Line", "", FIELD(TEXT, service_line, name),
		.flags = PANEL_TITLE | ROW_KEY | TEXT_WRAPS },
	{ "kind", "Kind", NULL, FIELD(WORD, service_line, kind), .words = line_kind_words },
	{ "state", "State", "", FIELD(WORD, service_line, state), .words = line_state_words,
		.flags = PANEL_TITLE },
	{ "owner", "Owner", NULL, FIELD(WORD, service_line, owner), .words = line_owner_words },
	{ "length_m", "Length", "Length", FIELD(LENGTH, service_line, length) },
	{ "depth_known", NULL, NULL, FIELD(TRUTH, service_line, has_depth) },
	{ "depth_m", NULL, NULL, FIELD(LENGTH, service_line, depth) },
	{ NULL, "To its top", "To its top", FIELD(INCHES, service_line, depth),
		.flags = TEXT_DASHED | PANEL_OPTIONAL },
	{ "trench", NULL, NULL, SAME_ROW, .table = &trench_table },
	{ NULL, NULL, "Trench, wide", FIELD(INCHES, service_line, width),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Trench, deep", FIELD(INCHES, service_line, trench_depth),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Trench, dug", FIELD(VOLUME, service_line, trench),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Sleeves", FIELD(COUNT, service_line, sleeve_count),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Sleeves, length", FIELD(LENGTH, service_line, sleeve_length),
		.flags = PANEL_OPTIONAL },
	{ "by_hand", NULL, NULL, FIELD(OBJECT, service_line, hand), .table = &by_hand_table },
	{ NULL, NULL, "Near it", FIELD(AREA, service_line, hand.area), .flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Holes near it", FIELD(COUNT, service_line, hand.post_count),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Plants near it", FIELD(COUNT, service_line, hand.plant_count),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Spikes near it", FIELD(COUNT, service_line, hand.spikes),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Fabric near it", FIELD(AREA, service_line, hand.fabric),
		.flags = PANEL_OPTIONAL },
};
const struct figure_table service_line_table = FIGURE_TABLE(service_line, line_figures);

static const struct figure kept_figures[] = {
	{ "name", NULL, "", FIELD(TEXT, kept, name), .flags = PANEL_TITLE | ROW_KEY },
	{ "radius_m", NULL, NULL, FIELD(LENGTH, kept, radius) },
	{ "from_m", NULL, NULL, FIELD(SPOT, kept, from) },
	{ "to_m", NULL, NULL, FIELD(SPOT, kept, to) },
	{ "by_hand", NULL, NULL, FIELD(OBJECT, kept, hand), .table = &by_hand_table },
	{ NULL, NULL, "Ground of it", FIELD(AREA, kept, hand.area) },
	{ NULL, NULL, "Holes in it", FIELD(COUNT, kept, hand.post_count),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Plants in it", FIELD(COUNT, kept, hand.plant_count),
		.flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Spikes in it", FIELD(COUNT, kept, hand.spikes), .flags = PANEL_OPTIONAL },
	{ NULL, NULL, "Fabric in it", FIELD(AREA, kept, hand.fabric), .flags = PANEL_OPTIONAL },
};
const struct figure_table kept_table = FIGURE_TABLE(kept, kept_figures);
