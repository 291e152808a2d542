#include "takeoff/watering/water_zones.h"
#include "base/stop.h"

struct making {
	struct zone_list *zones;
	struct arena *arena;
	int64_t most;
	size_t zone_capacity;
	struct zone_bed *beds; /* of the zone at hand */
	size_t bed_count, bed_capacity;
};

static struct water_zone *begin(struct making *making)
{
	struct zone_list *zones = making->zones;
	struct water_zone *zone;

	making->beds = NULL;
	making->bed_count = making->bed_capacity = 0;
	zones->list = arena_grow(making->arena, zones->list, (size_t)zones->count,
		&making->zone_capacity, sizeof *zones->list);
	zone = &zones->list[zones->count++];
	*zone = (struct water_zone){ .number = zones->count };
	return zone;
}

/* The zone at hand, or the next where it has no room for so many more. */
static struct water_zone *zone_for(struct making *making, int64_t emitters)
{
	struct water_zone *last = making->zones->count > 0 ?
		&making->zones->list[making->zones->count - 1] : NULL;

	return last && last->emitters + emitters <= making->most ? last : begin(making);
}

static void add(struct making *making, struct water_zone *zone, const struct zone_bed *bed)
{
	making->beds = arena_grow(making->arena, making->beds, making->bed_count,
		&making->bed_capacity, sizeof *making->beds);
	making->beds[making->bed_count++] = *bed;
	zone->beds = making->beds;
	zone->bed_count = (int)making->bed_count;
	zone->emitters += bed->emitters;
}

static void add_line(struct making *making, const struct zone_load *load, int bed, int line)
{
	int64_t emitters = load->drip->lines[line].emitters;
	struct water_zone *zone = line == 0 ? begin(making) : zone_for(making, emitters);
	struct zone_bed *last = making->bed_count > 0 ? &making->beds[making->bed_count - 1] :
		NULL;

	if (!last) {
		add(making, zone, &(struct zone_bed){ load->region, bed, line, 1, emitters,
			true });
		return;
	}
	last->lines++;
	last->emitters += emitters;
	zone->emitters += emitters;
}

void water_zones_make(struct zone_list *out, struct arena *arena, const struct zone_load *loads,
	int count, int64_t most)
{
	struct making making = { .zones = out, .arena = arena, .most = most };

	*out = (struct zone_list){ NULL, 0 };
	for (int i = 0; i < count && !stop_asked(); i++) {
		const struct drip *drip = loads[i].drip;

		if (drip->emitters > most && drip->count > 1) {
			for (int line = 0; line < drip->count && !stop_asked(); line++)
				add_line(&making, &loads[i], i, line);
			continue;
		}
		add(&making, zone_for(&making, drip->emitters), &(struct zone_bed){
			loads[i].region, i, 0, drip->count, drip->emitters, false });
	}
}

static const struct figure bed_figures[] = {
	{ "bed", NULL, NULL, FIELD(REGION, zone_bed, region), .flags = ROW_KEY },
	{ "first_line", NULL, NULL, FIELD(COUNT, zone_bed, first) },
	{ "lines", NULL, NULL, FIELD(COUNT, zone_bed, lines) },
	{ "emitters", NULL, NULL, FIELD(COUNT, zone_bed, emitters) },
};
static const struct figure_table bed_table = FIGURE_TABLE(zone_bed, bed_figures);

static const struct figure figures[] = {
	{ "zone", NULL, NULL, FIELD(COUNT, water_zone, number), .flags = ROW_KEY },
	{ "beds", NULL, NULL, FIELDS(ROWS, water_zone, beds, bed_count), .table = &bed_table },
	{ "emitters", NULL, "Emitters", FIELD(COUNT, water_zone, emitters) },
	{ "flow_m3_h", NULL, "Flow", FIELD(FLOW, water_zone, flow) },
	{ "week_minutes", NULL, "Minutes a week", FIELD(COUNT, water_zone, minutes) },
	{ "run_minutes", NULL, "Minutes each time", FIELD(COUNT, water_zone, run) },
	{ "week_m3", NULL, "Water a week", FIELD(WATER, water_zone, water) },
	{ "header_m", NULL, "Header", FIELD(LENGTH, water_zone, header),
		.flags = PANEL_OPTIONAL },
};
const struct figure_table water_zone_table = FIGURE_TABLE(water_zone, figures);
