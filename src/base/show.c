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

static void show_feet(struct text *out, int64_t sixteenths)
{
	if (sixteenths >= SIXTEENTHS_PER_FOOT) {
		show_count(out, sixteenths / SIXTEENTHS_PER_FOOT);
		text_add(out, " ft");
		sixteenths %= SIXTEENTHS_PER_FOOT;
		if (!sixteenths)
			return;
		text_add(out, " ");
	}
	length_write_inches(out, sixteenths * (NM_PER_INCH / 16));
}

static void show_millimetres(struct text *out, int64_t mm)
{
	if (mm < 1000) {
		text_print(out, "%d mm", (int)mm);
	} else {
		text_add_decimal(out, mm, 3);
		text_add(out, " m");
	}
}

void show_length(struct text *out, nm length, enum units units)
{
	nm unit = units == UNITS_IMPERIAL ? NM_PER_INCH / 16 : NM_PER_MM;
	nm size = length < 0 ? -length : length;
	int64_t count = (size + unit / 2) / unit;

	if (length < 0 && count)
		text_add(out, "-");
	if (units == UNITS_IMPERIAL)
		show_feet(out, count);
	else
		show_millimetres(out, count);
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

	if (units == UNITS_METRIC && round(volume * 1000) < 100)
		text_print(out, "%.0f L", volume * 1000);
	else if (units == UNITS_METRIC)
		text_print(out, "%.2f m3", volume);
	else if (round(cu_ft * 10) < 270)
		text_print(out, "%.1f cu ft", cu_ft);
	else
		text_print(out, "%.2f cu yd", cu_ft / 27);
}

void show_weight(struct text *out, double weight, enum units units)
{
	double shown = units == UNITS_IMPERIAL ? weight / KG_PER_LB : weight;

	if (round(shown * 10) < 1000)
		text_print(out, "%.1f", shown);
	else
		show_count(out, llround(shown));
	text_add(out, units == UNITS_IMPERIAL ? " lb" : " kg");
}
