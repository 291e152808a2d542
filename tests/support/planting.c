#include "support/planting.h"

#include <check.h>
#include <stdio.h>

void planting_add(struct garden *garden, const char *attributes_and_drifts)
{
	char lines[2000];

	snprintf(lines, sizeof lines, "plant z \"Plant\"\n  %s\n", attributes_and_drifts);
	plot_add_lines(&garden->plot, lines);
}

void planting_bed(struct garden *garden, int columns, int rows, const char *cell)
{
	garden_rectangle(garden, 'b', columns, rows);
	plot_set(&garden->plot, 'b', BED_BUILD, "level");
	plot_set(&garden->plot, 0, HEAD_CELL, cell);
}

int64_t planting_count(const struct garden *garden)
{
	const struct planting *planting = &garden->takeoff.planting;
	int64_t count = 0;

	for (int i = 0; i < planting->count; i++)
		count += planting->list[i].count;
	return count;
}

int planting_snags(const struct garden *garden, enum snag_code code)
{
	int count = 0;

	for (size_t i = 0; i < garden->takeoff.snags.count; i++)
		count += garden->takeoff.snags.list[i].code == code;
	return count;
}

const struct snag *planting_snag(const struct garden *garden, enum snag_code code)
{
	const struct snag *snag = garden_snag(garden, code, 0);

	ck_assert_ptr_nonnull(snag);
	return snag;
}
