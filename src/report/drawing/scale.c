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

static const int64_t degree = INT64_C(1000000), quarter = INT64_C(90000000);

struct scale_way scale_way(int64_t top, int64_t bearing)
{
	static const struct {
		const char *way, *before, *after; /* a little less and more than it, clockwise */
	} ways[] = { { "up", "left of", "right of" }, { "right", "above", "below" },
		{ "down", "right of", "left of" }, { "left", "below", "above" } };
	int64_t turn = (4 * quarter - top + bearing) % (4 * quarter), off = turn % quarter;
	int way = (int)(turn / quarter);

	if (2 * off > quarter || (2 * off == quarter && way % 2)) {
		way = (way + 1) % 4;
		off -= quarter;
	}
	return (struct scale_way){ .way = ways[way].way, .off = off < 0 ? -off : off,
		.side = off < 0 ? ways[way].before : off > 0 ? ways[way].after : NULL };
}

void scale_way_words(struct text *out, int64_t top, int64_t bearing)
{
	struct scale_way way = scale_way(top, bearing);

	if (way.side) {
		text_add_decimal(out, way.off, 6);
		text_print(out, " degree%s %s ", way.off == degree ? "" : "s", way.side);
	}
	text_add(out, way.way);
}

const char *north_words(const struct report *report)
{
	const struct value *north = block_value(&report->plot->details.head, HEAD_NORTH);
	struct text way = TEXT_EMPTY;

	if (!north->set)
		return "";
	scale_way_words(&way, north->as.number, 0);
	return say(report, "North is %s.", say_text(report, &way));
}
