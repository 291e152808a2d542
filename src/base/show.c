#include "base/show.h"

#include <math.h>

static const double SQ_M_PER_SQ_FT = 0.09290304;
static const double CU_M_PER_CU_FT = 0.028316846592;
static const double KG_PER_LB = 0.45359237;

enum { SIXTEENTHS_PER_FOOT = 16 * 12 };

void show_count(struct text *out, int64_t count)
{
	if (count < 0) {
		text_add(out, "-");
		count = -count;
	}
	if (count >= 1000) {
		show_count(out, count / 1000);
		text_print(out, ",%03d", (int)(count % 1000));
	} else {
		text_print(out, "%d", (int)count);
	}
}

static void show_inches(struct text *out, int64_t sixteenths)
{
	int64_t above = sixteenths % 16, below = 16;

	while (above && above % 2 == 0) {
		above /= 2;
		below /= 2;
	}
	if (sixteenths >= 16 || !above)
		text_print(out, "%d%s", (int)(sixteenths / 16), above ? " " : "");
	if (above)
		text_print(out, "%d/%d", (int)above, (int)below);
	text_add(out, " in");
}

static void show_feet(struct text *out, nm length)
{
	nm unit = NM_PER_INCH / 16;
	int64_t sixteenths = (length + unit / 2) / unit;

	if (sixteenths >= SIXTEENTHS_PER_FOOT) {
		show_count(out, sixteenths / SIXTEENTHS_PER_FOOT);
		text_add(out, " ft");
		sixteenths %= SIXTEENTHS_PER_FOOT;
		if (!sixteenths)
			return;
		text_add(out, " ");
	}
	show_inches(out, sixteenths);
}

void show_length(struct text *out, nm length, enum units units)
{
	if (length < 0) {
		text_add(out, "-");
		length = -length;
	}
	if (units == UNITS_IMPERIAL) {
		show_feet(out, length);
		return;
	}
	int64_t mm = (length + NM_PER_MM / 2) / NM_PER_MM;

	if (mm < 1000) {
		text_print(out, "%d mm", (int)mm);
	} else {
		text_add_decimal(out, mm, 3);
		text_add(out, " m");
	}
}

void show_area(struct text *out, double area, enum units units)
{
	if (units == UNITS_IMPERIAL)
		text_print(out, "%.1f sq ft", area / SQ_M_PER_SQ_FT);
	else
		text_print(out, "%.2f m2", area);
}

void show_volume(struct text *out, double volume, enum units units)
{
	double cu_ft = volume / CU_M_PER_CU_FT;

	if (units == UNITS_METRIC && volume < 0.1)
		text_print(out, "%.0f L", volume * 1000);
	else if (units == UNITS_METRIC)
		text_print(out, "%.2f m3", volume);
	else if (cu_ft < 27)
		text_print(out, "%.1f cu ft", cu_ft);
	else
		text_print(out, "%.2f cu yd", cu_ft / 27);
}

void show_weight(struct text *out, double weight, enum units units)
{
	double shown = units == UNITS_IMPERIAL ? weight / KG_PER_LB : weight;

	if (shown < 100)
		text_print(out, "%.1f", shown);
	else
		show_count(out, llround(shown));
	text_add(out, units == UNITS_IMPERIAL ? " lb" : " kg");
}
