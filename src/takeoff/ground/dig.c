#include "takeoff/ground/dig.h"
#include "takeoff/ground/fill.h"
#include "takeoff/common/item_rows.h"

#include <math.h>

_Static_assert((int)DIG_BED == (int)ZONE_BED, "zones are dug part by part");

double earth_sum(const struct earth *earth)
{
	return earth->sod + earth->topsoil + earth->subsoil;
}

static double volume(double area, nm depth)
{
	return area * (double)depth / (double)NM_PER_M;
}

static nm lesser(nm a, nm b)
{
	return a < b ? a : b;
}

static struct earth earth_below(const struct block *allow, double area, nm depth)
{
	nm sod = lesser(depth, block_length(allow, ALLOW_SOD));
	nm topsoil = lesser(depth - sod, block_length(allow, ALLOW_TOPSOIL));

	return (struct earth){ volume(area, sod), volume(area, topsoil),
		volume(area, depth - sod - topsoil) };
}

void dig_add(struct dig_list *list, struct dig dig)
{
	if (dig.area <= 0 || dig.depth <= 0)
		return;
	dig.bank = earth_below(list->allow, dig.area, dig.depth);
	list->rows = arena_grow(list->arena, list->rows, list->count, &list->capacity,
		sizeof *list->rows);
	list->rows[list->count++] = dig;
}

static nm lawn_depth(const struct block *lawn)
{
	nm topsoil = block_length(lawn, LAWN_TOPSOIL);

	return block_number(lawn, LAWN_COVER) == COVER_TURF ?
		topsoil + block_length(lawn, LAWN_THICKNESS) : topsoil;
}

static nm inside_depth(const struct takeoff *takeoff, const struct block *bed)
{
	nm embed = fill_embed(takeoff, bed);

	return block_number(bed, BED_INSIDE) == INSIDE_BASE ? block_length(bed, BED_BASE) + embed :
		embed;
}

static nm zone_depth(const struct takeoff *takeoff, const struct zone *zone)
{
	const struct block *block = &takeoff->survey.regions[zone->region].entry->block;

	switch (zone->part) {
	case ZONE_PATH:
		return block_length(block, PATH_BASE) + block_length(block, PATH_SURFACE);
	case ZONE_WALL:
		return block_length(block, BED_BASE) + fill_embed(takeoff, block);
	case ZONE_INSIDE:
		return inside_depth(takeoff, block);
	case ZONE_PAD:
		return block_length(block, FIXTURE_BASE) + fill_surface(takeoff);
	case ZONE_LAWN:
		return lawn_depth(block);
	case ZONE_BED:
		return block_length(block, BED_PREPARE);
	}
	return 0;
}

void dig_zones(struct dig_list *list, const struct takeoff *takeoff)
{
	for (int i = 0; i < takeoff->zones.count; i++) {
		const struct zone *zone = &takeoff->zones.list[i];

		dig_add(list, (struct dig){ .region = zone->region,
			.part = (enum dig_part)zone->part, .area = zone->area,
			.depth = zone_depth(takeoff, zone) });
	}
}

/* ---- Sums ------------------------------------------------------------------------------------- */

static double swell(const struct block *allow, enum attribute a)
{
	return 1 + (double)block_number(allow, a) / (double)MILLION / 100;
}

static struct earth loosened(const struct block *allow, const struct earth *bank)
{
	static const enum attribute subsoils[] = {
		[SUBSOIL_LOAM] = ALLOW_SWELL_LOAM, [SUBSOIL_CLAY] = ALLOW_SWELL_CLAY,
		[SUBSOIL_SAND] = ALLOW_SWELL_SAND,
	};
	double topsoil = swell(allow, ALLOW_SWELL_TOPSOIL);

	return (struct earth){ bank->sod * topsoil, bank->topsoil * topsoil,
		bank->subsoil * swell(allow, subsoils[block_number(allow, ALLOW_SUBSOIL)]) };
}

/* The topsoil that the mixes take, loose. */
static double topsoil_wanted(const struct takeoff *takeoff)
{
	double wanted = 0;

	for (int i = 0; i < takeoff->fill_count; i++)
		for (int j = 0; j < takeoff->fills[i].part_count; j++)
			if (fill_is_topsoil(&takeoff->fills[i].parts[j]))
				wanted += takeoff->fills[i].parts[j].volume;
	return wanted;
}

void dig_finish(struct takeoff *takeoff, const struct dig_list *list)
{
	struct earthwork *work = &takeoff->earthwork;
	double wanted = topsoil_wanted(takeoff);
	double density = amount_si(&block_effective(list->allow, ALLOW_DENSITY_SPOIL)->as.amount);

	*work = (struct earthwork){ .rows = list->rows, .count = (int)list->count };
	for (int i = 0; i < work->count; i++) {
		work->bank.sod += work->rows[i].bank.sod;
		work->bank.topsoil += work->rows[i].bank.topsoil;
		work->bank.subsoil += work->rows[i].bank.subsoil;
	}
	work->loose = loosened(list->allow, &work->bank);
	work->reused = fmin(work->loose.topsoil, wanted);
	work->reused_share = work->reused > 0 ? work->reused / wanted : 0;
	work->spoil = work->loose.sod + (work->loose.topsoil - work->reused) + work->loose.subsoil;
	work->spoil_weight = work->spoil * density;
	work->loads = loads_of(list->allow, work->spoil, density);
}

void dig_items(struct items *items, const struct takeoff *takeoff)
{
	double spoil = takeoff->earthwork.spoil;

	if (spoil > 0)
		item_add(items, &(struct item){ .id = "spoil", .section = SECTION_DIG,
			.label = "Spoil", .unit = UNIT_M3, .laid = spoil, .order = spoil,
			.note = "loose, to haul away" });
}

const char *dig_part_word(enum dig_part part)
{
	static const char *const words[] = {
		[DIG_PATH] = "path", [DIG_WALL] = "wall", [DIG_INSIDE] = "inside", [DIG_PAD] = "pad",
		[DIG_LAWN] = "lawn", [DIG_BED] = "bed", [DIG_HOLES] = "holes",
	};

	return words[part];
}
