#include "takeoff/walks/houses.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/cover.h"
#include "takeoff/fence/fence_snags.h"

#include <stdlib.h>

/* Cells from a bed's to a house's, across or down, that may be nearer than is allowed for: 1 where
 * they share a side. */
static int reach_of(const struct basis *basis)
{
	nm clear = block_length(basis->allow, ALLOW_HOUSE_CLEAR), cell = basis->survey->cell;

	return (int)quotient_up(clear, cell);
}

int houses_margin(const struct basis *basis)
{
	return most(reach_of(basis), 1);
}

/* ---- Regions --------------------------------------------------------------------------------- */

/* Of a cell: a house stands on it; it is nearer to one than is allowed for. */
enum { COVERED = 1, NEAR = 2 };

struct looking {
	const struct house_map *houses;
	int reach;
	int *wide; /* by rows from a house, 0..reach: so many columns from it are near */
	int *away; /* by column, from that of the margin on: rows from a house among those passed
	              so far, at most reach + 1 */
	unsigned char *cells; /* of the plan */
};

/* Between cells n apart there are n - 1. */
static void set_wide(const struct looking *looking, nm clear, nm2 cell)
{
	nm2 limit = (nm2)clear * clear, across = looking->reach;

	for (int away = 0; away <= looking->reach; away++) {
		nm2 down = away > 0 ? away - 1 : 0;

		while (across >= 0 &&
			(across * across + down * down) * cell * cell >= limit)
			across--;
		looking->wide[away] = (int)across + 1;
	}
}

static void mark_row(const struct looking *looking, int y)
{
	int margin = looking->houses->margin, columns = looking->houses->columns;
	const int *away = looking->away + margin;
	unsigned char *cells = looking->cells + (size_t)y * (size_t)columns;
	int right = -1, left = columns;

	for (int x = -margin; x < columns; x++) {
		if (away[x] <= looking->reach)
			right = most(right, x + looking->wide[away[x]]);
		if (x >= 0)
			cells[x] |= (unsigned char)((away[x] == 0 ? COVERED : 0) |
				(x <= right ? NEAR : 0));
	}
	for (int x = columns + margin - 1; x >= 0; x--) {
		if (away[x] <= looking->reach)
			left = least(left, x - looking->wide[away[x]]);
		if (x < columns && x >= left)
			cells[x] |= NEAR;
	}
}

/* Marks by the houses on the same row and on those passed before, downwards or upwards. */
static void pass_rows(const struct looking *looking, bool is_down)
{
	const struct house_map *houses = looking->houses;
	int margin = houses->margin, columns = houses->columns, rows = houses->rows;
	int *away = looking->away + margin;

	/* What was there before is out of reach once the margin is passed. */
	for (int i = -margin; i < rows && !stop_asked(); i++) {
		int y = is_down ? i : rows - 1 - i;

		for (int x = -margin; x < columns + margin; x++)
			away[x] = house_map_at(houses, x, y) ? 0 :
				least(away[x], looking->reach) + 1;
		if (i >= 0)
			mark_row(looking, y);
	}
}

/* A byte a cell. The caller frees. */
static unsigned char *look(const struct basis *basis, const struct house_map *houses)
{
	size_t columns = (size_t)houses->columns, margin = (size_t)houses->margin;
	int reach = reach_of(basis);
	struct looking looking = { houses, reach,
		memory_new((size_t)reach + 1, sizeof *looking.wide),
		memory_new(columns + 2 * margin, sizeof *looking.away),
		memory_new(columns * (size_t)houses->rows, sizeof *looking.cells) };

	set_wide(&looking, block_length(basis->allow, ALLOW_HOUSE_CLEAR), basis->survey->cell);
	pass_rows(&looking, true);
	pass_rows(&looking, false);
	free(looking.away);
	free(looking.wide);
	return looking.cells;
}

struct telling {
	const struct basis *basis;
	const unsigned char *cells;
	unsigned char *is_told; /* by region */
};

/* Adds the snag for each region that it takes and that has such a cell, there, unless something is
 * told of it. */
static void tell(const struct telling *telling, enum snag_code code, int mark, nm figure)
{
	const struct survey *survey = telling->basis->survey;
	const unsigned char *cells = telling->cells;

	for (int y = 0; y < survey->rows && !stop_asked(); y++, cells += survey->columns)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];
			int x = run->left;

			if (run->class == CLASS_OPEN || telling->is_told[run->region] ||
				(code == SNAG_HOUSE_NEAR && run->class != CLASS_BED))
				continue;
			while (x < run->right && !(cells[x] & mark))
				x++;
			if (x == run->right)
				continue;
			telling->is_told[run->region] = 1;
			snag_add(telling->basis->snags, code, run->region,
				SNAG_FIGURES_OF(figure))->cell = (struct place){ x, y };
		}
}

static void check_regions(const struct basis *basis, const struct house_map *houses)
{
	unsigned char *cells = look(basis, houses);
	unsigned char *is_told = memory_new((size_t)basis->survey->region_count, sizeof *is_told);
	const struct telling telling = { basis, cells, is_told };

	tell(&telling, SNAG_HOUSE_COVERED, COVERED, 0);
	tell(&telling, SNAG_HOUSE_NEAR, NEAR, block_length(basis->allow, ALLOW_HOUSE_CLEAR));
	free(is_told);
	free(cells);
}

/* ---- Fences ---------------------------------------------------------------------------------- */

/* Whether the side of a cell that begins at a grid point has house on both sides. */
static bool is_within(const struct house_map *houses, struct place from, bool is_upright)
{
	return house_map_at(houses, from.x, from.y) &&
		house_map_at(houses, from.x - is_upright, from.y - !is_upright);
}

static void add_within(struct legs *within, const struct house_map *houses, struct leg leg)
{
	bool is_upright = leg_is_upright(leg);
	struct leg f = leg_forward(leg);

	for (struct place at = f.from; !place_equal(at, f.to) && !stop_asked();) {
		struct place next = { at.x + !is_upright, at.y + is_upright };

		if (is_within(houses, at, is_upright))
			legs_add(within, (struct leg){ at, next });
		at = next;
	}
}

static void check_fence(const struct basis *basis, const struct house_map *houses, size_t fence)
{
	struct legs legs = LEGS_EMPTY, within = LEGS_EMPTY;
	size_t before = basis->snags->count;

	fence_legs(&basis->plot->details.fences[fence], &legs);
	for (size_t i = 0; i < legs.count && !stop_asked(); i++)
		add_within(&within, houses, legs.items[i]);
	legs_join(&within);
	for (size_t i = 0; i < within.count && !stop_asked(); i++)
		fence_warn_at(basis, SNAG_HOUSE_FENCE, within.items[i], SNAG_FIGURES_OF(
			leg_length(within.items[i]) * basis->survey->cell));
	snags_of_fence(basis->snags, before, (int)fence);
	legs_fini(&within);
	legs_fini(&legs);
}

void houses_check(const struct basis *basis, const struct house_map *houses)
{
	if (!houses->cells)
		return;
	check_regions(basis, houses);
	for (size_t i = 0; i < basis->plot->details.fence_count && !stop_asked(); i++)
		check_fence(basis, houses, i);
}
