/* What takeoffs of the hardest plots take of time and memory, as text and as JSON. At 512 x 512
 * cells; with FULL set at 2048 x 2048, the largest that there are. */
#include "support/measure.h"

#include <stdio.h>
#include <stdlib.h>

static void show(const struct shape *shape, int size, bool is_json)
{
	struct measured measured = measure_takeoff(shape, size, is_json);

	printf("  %-16s %-4s %8.2f s %8.1f MB held %10.3f MB printed\n", shape->name,
		is_json ? "JSON" : "text", measured.seconds, (double)measured.peak / 1e6,
		(double)measured.printed / 1e6);
	fflush(stdout);
	if (measured.status != 0)
		exit(1);
}

int main(void)
{
	int size = getenv("FULL") ? 2048 : 512;

	printf("takeoffs of %d x %d cells\n", size, size);
	fflush(stdout);
	for (int i = 0; i < shape_count; i++) {
		show(&shapes[i], size, false);
		show(&shapes[i], size, true);
	}
	return 0;
}
