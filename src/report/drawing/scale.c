#include "report/drawing/scale.h"

static nm unit_of(enum units units)
{
	return units == UNITS_METRIC ? NM_PER_M : NM_PER_FOOT;
}

nm scale_step(enum units units, nm least)
{
	static const int factors[] = { 1, 2, 5 };

	for (nm ten = unit_of(units);; ten *= 10)
		for (size_t i = 0; i < sizeof factors / sizeof *factors; i++)
			if (factors[i] * ten >= least)
				return factors[i] * ten;
}

void scale_words(struct text *out, nm at, enum units units)
{
	text_print(out, "%d%s", (int)(at / unit_of(units)), units == UNITS_METRIC ? " m" : "'");
}

static const int64_t turn = INT64_C(360000000), eighth = INT64_C(45000000);

const char *const scale_ways[SCALE_WAYS] = { "up", "up right", "right", "down right", "down",
	"down left", "left", "up left" };

int scale_towards(int64_t top, int64_t bearing)
{
	return (int)((turn - top + bearing + eighth / 2) / eighth % SCALE_WAYS);
}

int scale_north(int64_t bearing)
{
	return scale_towards(bearing, 0);
}
