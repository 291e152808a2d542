#include "prices/in_force.h"

/* instead: what holds where the block sets nothing, before the default; NULL: nothing. */
static void put_in_force(struct block *block, struct arena *arena, enum units units,
	const struct block *instead)
{
	enum attribute first = block_first(block->kind);
	struct value *values = arena_new(arena, block_attributes(block->kind), sizeof *values);

	for (enum attribute a = first; a <= block_last(block->kind); a++) {
		const struct value *value = block_value(block, a);

		if (!value->set && instead)
			value = block_value(instead, a);
		values[a - first] = value->set ? *value : *attribute_preset(a, units);
	}
	block->values = values;
}

/* Where the ground heaves or holds water the base is half as deep again: common practice, no
 * published source. */
static void put_base(struct block *block, enum attribute a, const struct block *allow,
	enum units units)
{
	struct value *base = &block->values[a - block_first(block->kind)];
	bool is_deep = block_number(allow, ALLOW_SUBSOIL) == SUBSOIL_CLAY ||
		block_length(allow, ALLOW_FROST) > 0;
	nm usual = units == UNITS_METRIC ? 100 * NM_PER_MM : 4 * NM_PER_INCH;

	if (!base->set)
		*base = (struct value){ .set = true,
			.as.length = is_deep ? usual * 3 / 2 : usual };
}

static void put_services(struct details *details, struct arena *arena, enum units units)
{
	struct services *services = &details->around.services;
	struct service *items = arena_new(arena, services->count, sizeof *items);

	for (size_t i = 0; i < services->count; i++) {
		items[i] = services->items[i];
		put_in_force(&items[i].block, arena, units, NULL);
	}
	services->items = items;
}

/* A plant is as wide as it is spaced where nothing else is told. */
static void put_plants(struct details *details, struct arena *arena, enum units units)
{
	struct plants *plants = &details->plants;
	struct plant *items = arena_new(arena, plants->count, sizeof *items);

	for (size_t i = 0; i < plants->count; i++) {
		struct value *values;

		items[i] = plants->items[i];
		put_in_force(&items[i].block, arena, units, NULL);
		values = items[i].block.values;
		if (!values[PLANT_SPREAD - PLANT_SPACING].set)
			values[PLANT_SPREAD - PLANT_SPACING] = values[0];
	}
	plants->items = items;
}

struct plot plot_in_force(struct arena *arena, const struct plot *plot, const struct book *book)
{
	enum units units = plot_units(plot);
	struct plot all = *plot;
	struct details *details = &all.details;

	put_in_force(&details->allow, arena, units, book ? &book->allow : NULL);
	details->legend = arena_new(arena, details->legend_count, sizeof *details->legend);
	for (size_t i = 0; i < details->legend_count; i++) {
		details->legend[i] = plot->details.legend[i];
		put_in_force(&details->legend[i].block, arena, units, NULL);
		if (details->legend[i].class == CLASS_BED)
			put_base(&details->legend[i].block, BED_BASE, &details->allow, units);
		if (details->legend[i].class == CLASS_PATH)
			put_base(&details->legend[i].block, PATH_BASE, &details->allow, units);
	}
	details->fences = arena_new(arena, details->fence_count, sizeof *details->fences);
	for (size_t i = 0; i < details->fence_count; i++) {
		details->fences[i] = plot->details.fences[i];
		put_in_force(&details->fences[i].block, arena, units, NULL);
	}
	put_services(details, arena, units);
	put_plants(details, arena, units);
	return all;
}
