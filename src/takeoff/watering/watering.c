#include "takeoff/watering/watering.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/watering/water_header.h"

#include <math.h>
#include <stdlib.h>

enum { MINUTES = 60 };

/* A bed gets more than it asks for from so many times as much on. */
static const double OVER = 1.1;

static bool is_watered(const struct region *region)
{
	return region->entry->class == CLASS_BED &&
		block_number(&region->entry->block, BED_WATER) == WATER_DRIP;
}

/* ---- Beds ------------------------------------------------------------------------------------ */

/* wall: NULL of a bed at ground level. */
static struct watered bed_lay(const struct basis *basis, int region, const struct wall *wall)
{
	const struct survey *survey = basis->survey;
	const struct block *block = &survey->regions[region].entry->block;
	double rate = block_amount(basis->allow, ALLOW_EMITTER_RATE);
	struct watered bed = { .region = region, .area = wall ? wall->inner_area :
		survey_area(survey->regions[region].cells, survey->cell) };
	struct slabs slabs;

	slabs_find(&slabs, basis->arena, basis, region, wall ? wall->block.across : 0);
	drip_lay(&bed.drip, basis->arena, &slabs, block_length(block, BED_DRIP_ROW),
		block_length(block, BED_DRIP_EMITTER));
	bed.line_count = bed.drip.count;
	bed.flow = (double)bed.drip.emitters * rate;
	bed.water = volume_of(bed.area, block_length(basis->allow, ALLOW_WATER_WEEK));
	bed.minutes = bed.water / bed.flow * MINUTES;
	return bed;
}

static struct watered *lay_beds(struct watering *out, const struct basis *basis,
	const struct walls *walls)
{
	const struct survey *survey = basis->survey;
	struct watered *list = NULL;
	size_t count = 0, capacity = 0;

	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		const struct region *region = &survey->regions[i];
		const struct wall *wall = walls_find(walls, i);

		if (!is_watered(region) || (region_is_raised(region) && !wall))
			continue;
		list = arena_grow(basis->arena, list, count, &capacity, sizeof *list);
		list[count++] = bed_lay(basis, i, wall);
	}
	out->list = list;
	out->count = (int)count;
	return list;
}

static void add_sums(struct watering *out)
{
	for (int i = 0; i < out->count; i++) {
		const struct watered *bed = &out->list[i];

		out->lines += bed->drip.count;
		out->emitters += bed->drip.emitters;
		out->tube += bed->drip.length;
		out->flow += bed->flow;
		out->asked += bed->water;
	}
	for (int i = 0; i < out->zone_count; i++) {
		out->minutes += out->zones[i].minutes;
		out->water += out->zones[i].water;
	}
}

/* ---- Snags ----------------------------------------------------------------------------------- */

static nm ml(double flow)
{
	return llround(flow * (double)MILLION);
}

/* What of a line the water goes along from where it is fed: from an end where nobody knows. */
static struct drip_line fed(const struct watered *bed, int index)
{
	struct drip_line part = bed->drip.lines[index];
	const struct chord *line = &bed->drip.lines[index].chord;
	nm at = bed->header.branches[bed->header.of_lines[index]].at;
	int64_t emitters = part.emitters, before = 0;

	if (!bed->is_reached)
		return part;
	while (before < emitters && line->from + drip_place(line->to - line->from, emitters,
		before) < at)
		before++;
	part.chord = (struct chord){ 0, nm_most(at - line->from, line->to - at) };
	part.emitters = before > emitters - before ? before : emitters - before;
	return part;
}

static void warn_bed(const struct watering *out, const struct basis *basis,
	const struct watered *bed)
{
	double rate = block_amount(basis->allow, ALLOW_EMITTER_RATE);
	double carried = block_amount(basis->allow, ALLOW_LINE_FLOW);
	nm limit = block_length(basis->allow, ALLOW_LINE_LIMIT), longest = 0;
	int64_t emitters = 0, all = 0;

	for (int i = 0; i < bed->drip.count; i++) {
		struct drip_line part = fed(bed, i);

		longest = nm_most(longest, part.chord.to - part.chord.from);
		emitters = nm_most(emitters, part.emitters);
		all = nm_most(all, bed->drip.lines[i].emitters);
	}
	if (longest > limit)
		snag_add(basis->snags, SNAG_WATER_LINE, bed->region,
			SNAG_FIGURES_OF(longest, limit))->kind = WATER_LINE_LONG;
	else if (ml((double)emitters * rate) > ml(carried))
		snag_add(basis->snags, SNAG_WATER_LINE, bed->region,
			SNAG_FIGURES_OF(ml((double)emitters * rate), ml(carried)))->kind =
			WATER_LINE_THIRSTY;
	if (ml((double)all * rate) > ml(out->most))
		snag_add(basis->snags, SNAG_WATER_FLOW, bed->region,
			SNAG_FIGURES_OF(ml((double)all * rate), ml(out->most)));
}

/* ---- Zones ----------------------------------------------------------------------------------- */

/* Whole minutes each time, for so deep a week; pace: minutes for a metre. A hair more than a whole
 * number comes of reckoning alone. */
static int64_t run_of(double pace, nm depth, int64_t runs)
{
	return (int64_t)ceil(pace * metres(depth) / (double)runs - 1e-9);
}

/* m3. */
static double flow_in(double flow, int64_t minutes)
{
	return flow * (double)minutes / MINUTES;
}

/* Minutes in which a bed gets a metre of water. */
static double pace_of(const struct watered *bed)
{
	return bed->area / bed->flow * MINUTES;
}

/* What flows to a bed with its zone, and what a zone of its own would spare. */
static void water_bed(struct watered *bed, const struct zone_bed *part,
	const struct water_zone *zone, const struct basis *basis)
{
	double flow = (double)part->emitters * block_amount(basis->allow, ALLOW_EMITTER_RATE);
	double pace = pace_of(bed);
	int64_t runs = block_number(basis->allow, ALLOW_WATER_RUNS);
	int64_t own = runs * run_of(pace, block_length(basis->allow, ALLOW_WATER_WEEK), runs);

	bed->gets += flow_in(flow, zone->minutes);
	if (zone->pace > OVER * pace)
		bed->over += flow_in(flow, zone->minutes - own);
}

static void water_beds(const struct watering *out, struct watered *beds, const struct basis *basis)
{
	for (int i = 0; i < out->zone_count && !stop_asked(); i++)
		for (int j = 0; j < out->zones[i].bed_count; j++)
			water_bed(&beds[out->zones[i].beds[j].bed], &out->zones[i].beds[j],
				&out->zones[i], basis);
}

static struct water_zone *make_zones(struct watering *out, const struct basis *basis)
{
	double rate = block_amount(basis->allow, ALLOW_EMITTER_RATE);
	struct zone_load *loads = memory_new((size_t)out->count, sizeof *loads);
	nm usual = block_length(basis->allow, ALLOW_WATER_WEEK);
	struct zone_list zones;

	for (int i = 0; i < out->count; i++)
		loads[i] = (struct zone_load){ out->list[i].region, &out->list[i].drip };
	/* A hair less than a whole number comes of reckoning alone. */
	water_zones_make(&zones, basis->arena, loads, out->count,
		(int64_t)floor(out->most / rate + 1e-9));
	free(loads);
	for (int i = 0; i < zones.count && !stop_asked(); i++) {
		struct water_zone *zone = &zones.list[i];

		zone->flow = (double)zone->emitters * rate;
		for (int j = 0; j < zone->bed_count; j++)
			zone->pace = fmax(zone->pace, pace_of(&out->list[zone->beds[j].bed]));
		zone->run = run_of(zone->pace, usual, out->runs);
		zone->minutes = zone->run * out->runs;
		zone->water = flow_in(zone->flow, zone->minutes);
	}
	out->zones = zones.list;
	out->zone_count = zones.count;
	return zones.list;
}

/* ---- Weeks ----------------------------------------------------------------------------------- */

static nm month_depth(const struct block *allow, int month)
{
	const struct value *depth = block_value(allow,
		(enum attribute)(ALLOW_WATER_JANUARY + month));

	return depth->set ? depth->as.length : block_length(allow, ALLOW_WATER_WEEK);
}

static void find_zone_weeks(struct watering *out, const struct basis *basis)
{
	struct zone_week *weeks = arena_new(basis->arena, (size_t)out->zone_count * MONTHS,
		sizeof *weeks);

	out->zone_weeks = weeks;
	out->zone_week_count = out->zone_count * MONTHS;
	for (int i = 0; i < out->zone_week_count; i++) {
		const struct water_zone *zone = &out->zones[i / MONTHS];
		struct zone_week *week = &weeks[i];

		*week = (struct zone_week){ .zone = zone->number,
			.month = (unsigned int)(i % MONTHS),
			.depth = month_depth(basis->allow, i % MONTHS) };
		week->run = run_of(zone->pace, week->depth, out->runs);
		week->minutes = week->run * out->runs;
		week->water = flow_in(zone->flow, week->minutes);
	}
}

static void find_bed_weeks(struct watering *out, const struct basis *basis)
{
	struct water_week *weeks = arena_new(basis->arena, (size_t)out->count * MONTHS,
		sizeof *weeks);
	double rate = block_amount(basis->allow, ALLOW_EMITTER_RATE);

	out->weeks = weeks;
	out->week_count = out->count * MONTHS;
	for (int i = 0; i < out->week_count; i++) {
		nm depth = month_depth(basis->allow, i % MONTHS);

		weeks[i] = (struct water_week){ .region = out->list[i / MONTHS].region,
			.month = (unsigned int)(i % MONTHS), .depth = depth,
			.water = volume_of(out->list[i / MONTHS].area, depth) };
	}
	for (int i = 0; i < out->zone_count && !stop_asked(); i++)
		for (int j = 0; j < out->zones[i].bed_count; j++)
			for (int month = 0; month < MONTHS; month++) {
				const struct zone_bed *part = &out->zones[i].beds[j];

				weeks[part->bed * MONTHS + month].gets += flow_in(
					(double)part->emitters * rate,
					out->zone_weeks[i * MONTHS + month].minutes);
			}
}

static void find_months(struct watering *out, const struct basis *basis)
{
	struct water_month *months = arena_new(basis->arena, MONTHS, sizeof *months);

	out->months = months;
	out->month_count = MONTHS;
	for (int month = 0; month < MONTHS; month++)
		months[month] = (struct water_month){ .month = (unsigned int)month,
			.depth = month_depth(basis->allow, month) };
	for (int i = 0; i < out->zone_week_count; i++) {
		months[i % MONTHS].minutes += out->zone_weeks[i].minutes;
		months[i % MONTHS].water += out->zone_weeks[i].water;
	}
}

/* ---- All of it ------------------------------------------------------------------------------- */

void watering_find(struct watering *out, const struct basis *basis,
	const struct water_ground *ground)
{
	struct watered *beds;
	struct water_zone *zones;

	*out = (struct watering){ .is_measured = ground->is_measured,
		.supply = block_amount(basis->allow, ALLOW_SUPPLY),
		.has_tap = basis->plot->details.around.has_tap,
		.stakes_apart = plot_units(basis->plot) == UNITS_METRIC ? NM_PER_M :
			3 * NM_PER_FOOT,
		.runs = block_number(basis->allow, ALLOW_WATER_RUNS) };
	out->most = out->supply * block_share(basis->allow, ALLOW_SUPPLY_USED);
	beds = lay_beds(out, basis, ground->walls);
	if (out->count == 0 || stop_asked())
		return;
	zones = make_zones(out, basis);
	water_beds(out, beds, basis);
	add_sums(out);
	find_zone_weeks(out, basis);
	find_bed_weeks(out, basis);
	find_months(out, basis);
	if (!stop_asked())
		water_header_find(out, beds, zones, basis, ground);
	for (int i = 0; i < out->count && !stop_asked(); i++)
		warn_bed(out, basis, &beds[i]);
}
