#include "takeoff/work_facts.h"
#include "base/stop.h"
#include "takeoff/takeoff.h"

#include <string.h>

/* Nobody goes into a deeper one that is not shored: common practice, no published source. */
#define TRENCH_MOST (4 * NM_PER_FOOT)

static uint64_t fact_if(bool is_so, uint64_t facts)
{
	return is_so ? facts : 0;
}

static uint64_t earth_facts(const struct earthwork *earth)
{
	uint64_t facts = fact_if(earth->bank.topsoil > 0, FACT(TOPSOIL)) |
		fact_if(earth->reused > 0, FACT(REUSED)) |
		fact_if(earth->backfill > 0, FACT(BACKFILL)) |
		fact_if(earth->fill > 0, FACT(LOW)) |
		fact_if(earth->loosened > 0, FACT(LOOSENED)) |
		fact_if(earth->spoil > 0, FACT(SPOIL)) |
		fact_if(earth->deepest > TRENCH_MOST, FACT(DEEP));

	for (int i = 0; i < earth->count && !stop_asked(); i++)
		facts |= earth->rows[i].part == DIG_HOLES ? FACT(HOLES) : FACT(ZONES);
	return facts;
}

static uint64_t good_facts(const struct item_list *items)
{
	static const uint64_t facts_of[GOODS] = {
		[GOOD_BLOCK_CAP] = FACT(CAPS), [GOOD_ADHESIVE] = FACT(ADHESIVE),
		[GOOD_LINER] = FACT(LINER), [GOOD_MULCH] = FACT(MULCH),
		[GOOD_FENCE_CONCRETE] = FACT(CONCRETE), [GOOD_FENCE_GRAVEL] = FACT(GRAVEL),
		[GOOD_STONE_BASE] = FACT(BASE), [GOOD_STONE_FINES] = FACT(FINES),
		[GOOD_FABRIC] = FACT(FABRIC), [GOOD_EDGING] = FACT(EDGING),
		[GOOD_LAWN_TOPSOIL] = FACT(LAWN_SOIL), [GOOD_TURF] = FACT(TURF),
		[GOOD_PLANT] = FACT(PLANTS),
		[GOOD_SEED] = FACT(SEED), [GOOD_DRIP_TUBE] = FACT(WATER),
		[GOOD_EXTRA] = FACT(EXTRAS),
	};
	uint64_t facts = 0;

	for (size_t i = 0; i < items->count; i++)
		facts |= facts_of[items->list[i].good];
	return facts;
}

static uint64_t labour_facts(const struct labours *labours)
{
	static const struct { enum attribute kind; uint64_t facts; } kinds[] = {
		{ RATE_STRIP, FACT(SOD) }, { RATE_PREPARE, FACT(PREPARED) },
		{ RATE_CUT, FACT(CUTS) }, { RATE_SURFACE, FACT(PATHS) },
		{ RATE_POST, FACT(POSTS) }, { RATE_PANEL, FACT(PANELS) },
		{ RATE_GATE, FACT(GATES) }, { RATE_FIXTURE, FACT(FIXTURES) },
	};
	uint64_t facts = 0;

	for (int i = 0; i < labours->count; i++)
		for (size_t j = 0; j < sizeof kinds / sizeof *kinds; j++)
			facts |= fact_if(labours->list[i].kind == kinds[j].kind, kinds[j].facts);
	return facts;
}

static uint64_t fill_facts(const struct fills *fills)
{
	static const uint64_t facts_of[FILL_WAYS] = { [FILL_RAISED] = FACT(RAISED),
		[FILL_REPLACED] = FACT(REPLACED), [FILL_AMENDED] = FACT(AMENDED) };
	uint64_t facts = 0;

	for (int i = 0; i < fills->count && !stop_asked(); i++) {
		const struct fill *fill = &fills->list[i];

		if (fill->order > 0)
			facts |= facts_of[fill->way] | fact_if(fill->part_count > 1, FACT(MIX));
	}
	return facts;
}

static uint64_t area_facts(const struct areas *areas)
{
	uint64_t facts = 0;

	for (int i = 0; i < areas->count; i++)
		facts |= fact_if(areas->list[i].cells > 0 && areas->list[i].entry &&
			areas->list[i].entry->class == CLASS_BED, FACT(BEDS));
	return facts;
}

/* A path has a base, a surface or both. */
static uint64_t path_facts(const struct stones *stones)
{
	uint64_t facts = 0;

	for (int i = 0; i < stones->count && !stop_asked(); i++)
		facts |= fact_if(stones->list[i].place == STONE_PATH, FACT(PATHS));
	return facts;
}

static uint64_t line_facts(const struct service_lines *lines)
{
	uint64_t facts = fact_if(lines->existing > 0, FACT(LINES)) |
		fact_if(lines->kept_count > 0, FACT(KEPT)) |
		fact_if(lines->to_lay > 0, FACT(LAID));

	for (int i = 0; i < lines->count; i++)
		facts |= fact_if(lines->list[i].trench_depth > TRENCH_MOST, FACT(DEEP));
	return facts;
}

static uint64_t water_facts(const struct watering *watering)
{
	return fact_if(watering->trench + watering->sleeve_length > 0, FACT(HEADER)) |
		fact_if(watering->trench_depth > TRENCH_MOST, FACT(DEEP));
}

uint64_t work_facts(const struct takeoff *takeoff, const struct labours *labours)
{
	const struct walls *walls = &takeoff->walls;
	uint64_t facts = earth_facts(&takeoff->earthwork) | good_facts(&takeoff->items) |
		labour_facts(labours) | fill_facts(&takeoff->fills) | area_facts(&takeoff->areas) |
		path_facts(&takeoff->stones) | line_facts(&takeoff->services) |
		water_facts(&takeoff->watering);

	return facts | fact_if(walls->count + walls->not_laid_count > 0, FACT(WALLS)) |
		fact_if(takeoff->levelling.volumes.finished.cut +
			takeoff->levelling.volumes.finished.fill > 0, FACT(LEVELS)) |
		fact_if(takeoff->fixtures.inside > 0, FACT(FIXTURES_INSIDE)) |
		fact_if(block_number(takeoff->allow, ALLOW_TAMPER) == TAMPER_PLATE, FACT(PLATE));
}
