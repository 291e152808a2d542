#include "editor/sheets/metric.h"
#include "base/scan.h"

#include <assert.h>
#include <string.h>

/* Common practice, no published source. */
static const struct {
	enum attribute attribute;
	const char *value;
} table[] = {
	{ ALLOW_KERF, "3 mm" },
	{ ALLOW_FIT, "3 mm" },
	{ ALLOW_SHORTEST, "75 mm" },
	{ ALLOW_INSIDE, "200 mm" },
	{ ALLOW_CARTRIDGE, "9 m" },
	{ ALLOW_SOD, "50 mm" },
	{ ALLOW_SEED, "30 g/m2" },
	{ ALLOW_DENSITY_STONE, "1600 kg/m3" },
	{ ALLOW_DENSITY_SOIL, "1190 kg/m3" },
	{ ALLOW_DENSITY_COMPOST, "650 kg/m3" },
	{ ALLOW_DENSITY_MULCH, "355 kg/m3" },
	{ ALLOW_DENSITY_SPOIL, "1250 kg/m3" },
	{ ALLOW_BARROW_VOLUME, "100 L" },
	{ ALLOW_BARROW_WEIGHT, "130 kg" },
	{ ALLOW_PICKUP_WEIGHT, "680 kg" },
	{ ALLOW_TRUCK_VOLUME, "6 m3" },
	{ ALLOW_TRUCK_WEIGHT, "9000 kg" },
	{ ALLOW_TRUCK_STEP, "0.25 m3" },
	{ ALLOW_FABRIC_WIDTH, "2 m" },
	{ ALLOW_FABRIC_LENGTH, "25 m" },
	{ ALLOW_FABRIC_LAP, "150 mm" },
	{ ALLOW_FABRIC_END_LAP, "300 mm" },
	{ ALLOW_FABRIC_OFFCUT, "1 m" },
	{ ALLOW_FABRIC_PINS, "1 m" },
	{ ALLOW_LINER_TURN, "150 mm" },
	{ ALLOW_EDGING_PIECE, "2.4 m" },
	{ ALLOW_EDGING_SPIKE, "600 mm" },
	{ ALLOW_CONCRETE_BAG, "9.5 L" }, /* of 20 kg */
	{ ALLOW_POST_STOCK, "300 mm" },
	{ BED_BLOCK, "400 mm x 200 mm x 150 mm" },
	{ BED_DENSITY, "2150 kg/m3" },
	{ BED_EMBED, "40 mm" },
	{ BED_BASE, "100 mm" },
	{ BED_REACH, "150 mm" },
	{ BED_FREEBOARD, "40 mm" },
	{ BED_MULCH, "50 mm" },
	{ BED_PREPARE, "200 mm" },
	{ BED_AMEND, "50 mm" },
	{ PATH_BASE, "100 mm" },
	{ PATH_SURFACE, "40 mm" },
	{ LAWN_TOPSOIL, "50 mm" },
	{ LAWN_THICKNESS, "20 mm" },
	{ FIXTURE_BASE, "100 mm" },
	{ FENCE_HEIGHT, "900 mm" },
	{ FENCE_SECTION, "2.4 m" },
	{ FENCE_POST, "90 mm" },
	{ FENCE_GAP, "50 mm" },
	{ FENCE_GRAVEL, "150 mm" },
	{ FENCE_GATE_GAPS, "30 mm" },
	{ FENCE_LEAF, "1.2 m" },
};

static void set(struct block *block, enum attribute attribute, const char *words)
{
	struct scan s = scan_start(words, strlen(words), 1);
	struct value value = { .set = false };
	struct diag d;
	bool is_good = value_scan(&s, &attribute_row(attribute)->rule, UNITS_METRIC, &value, &d);

	assert(is_good); /* the table's values are */
	(void)is_good;
	block_set(block, attribute, value);
}

void metric_fill(struct block *block)
{
	for (size_t i = 0; i < sizeof table / sizeof *table; i++)
		if (attribute_row(table[i].attribute)->block == block->kind)
			set(block, table[i].attribute, table[i].value);
}
