#include "base/measure.h"
#include "base/stop.h"
#include "takeoff/ground/cut_fill.h"

struct cut_fill unit_areas(const nm *heights, const nm *across, int columns, const nm *down,
	int rows)
{
	struct cut_fill sum = { 0, 0, 0 };

	for (int y = 0; y + 1 < rows && !stop_asked(); y++) {
		for (int x = 0; x + 1 < columns; x++) {
			double quarter = area_of(across[x + 1] - across[x], down[y + 1] - down[y]) /
				4;
			const nm *upper = heights + (size_t)y * (size_t)columns + x;
			const nm corners[] = { upper[0], upper[1], upper[columns],
				upper[columns + 1] };

			for (int i = 0; i < 4; i++)
				*(corners[i] > 0 ? &sum.cut : &sum.fill) +=
					volume_of(quarter, corners[i] > 0 ? corners[i] :
					-corners[i]);
		}
	}
	sum.net = sum.cut - sum.fill;
	return sum;
}
