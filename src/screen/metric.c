#include "screen/metric.h"
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
	{ BED_BLOCK, "400 mm x 200 mm x 150 mm" },
	{ BED_DENSITY, "2150 kg/m3" },
	{ BED_EMBED, "40 mm" },
	{ BED_BASE, "100 mm" },
	{ BED_FREEBOARD, "40 mm" },
	{ BED_MULCH, "50 mm" },
	{ BED_PREPARE, "200 mm" },
	{ BED_AMEND, "50 mm" },
	{ PATH_BASE, "100 mm" },
	{ PATH_SURFACE, "40 mm" },
	{ LAWN_TOPSOIL, "50 mm" },
	{ FIXTURE_BASE, "100 mm" },
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
