/* Figures as people read them, in the plot's own units. Rounding happens here and nowhere
 * before. */
#ifndef BASE_SHOW_H
#define BASE_SHOW_H

#include "base/length.h"

/* What a figure is counted in where its unit is named apart. */
struct show_unit {
	const char *word; /* "cu yd" */
	double size;      /* `times` of them are so many m, m2, m3 or kg */
	int times;
	int places;       /* that it is shown with */
};
/* ft or m, as decimals; the unit of show_area; the one that show_volume and show_weight take for
 * such a figure. */
const struct show_unit *show_length_unit(enum units units);
const struct show_unit *show_area_unit(enum units units);
const struct show_unit *show_volume_unit(double volume, enum units units);
const struct show_unit *show_weight_unit(double weight, enum units units);
/* How many of the unit a figure in SI units is, not rounded. */
double show_number(const struct show_unit *unit, double figure);

/* Imperial: feet and inches to the nearest 1/16 in, "7 ft 11 5/16 in", "6 in". Metric: whole
 * millimetres below 1 m, "150 mm", and metres to the nearest millimetre from there on, "2.44 m",
 * without trailing zeros. */
void show_length(struct text *out, nm length, enum units units);
/* As a rule or a saw's stop reads it: imperial in inches alone, "13 7/8 in"; metric as above. */
void show_inches(struct text *out, nm length, enum units units);
/* As a tape is read, without its unit: inches to the nearest 1/16, whole millimetres: "13 7/8",
 * "-8", "2440". */
void show_tape(struct text *out, nm length, enum units units);
/* show_inches to the nearest 1/64 in and 1/100 mm, for pieces that are to add up: "112.5 mm". */
void show_piece(struct text *out, nm length, enum units units);
/* What show_piece shows a length as. */
nm show_piece_rounded(nm length, enum units units);
/* As short as it can be said, for rulers: 5', 2'6", 1.5. length 0 or more. */
void show_short(struct text *out, nm length, enum units units);
/* "1,284.0 sq ft", "7.80 m2". area in square metres. */
void show_area(struct text *out, double area, enum units units);
/* The same for columns of figures: without the unit, which is named apart. */
void show_area_bare(struct text *out, double area, enum units units);
/* "1.33 cu yd" from 1 cu yd up, else "9.5 cu ft"; "0.52 m3" from 1/10 m3 up, else "52 L".
 * volume in cubic metres. Which of the two it is depends on the figure as it would be shown. */
void show_volume(struct text *out, double volume, enum units units);
/* The same in the unit that the volume `like` would have: for rows of figures. */
void show_volume_like(struct text *out, double volume, double like, enum units units);
/* "52.0 lb", "23.6 kg" below 100, whole from there: "1,250 lb"; "3.2 oz", "90 g" below 1. weight in
 * kilograms. */
void show_weight(struct text *out, double weight, enum units units);
/* "19.9 gal", "75.5 L" below 100, whole from there. water in cubic metres. */
void show_water(struct text *out, double water, enum units units);
/* The same without the unit. */
void show_water_bare(struct text *out, double water, enum units units);
/* The same by the hour: "14.4 gal/h", "900 L/h". flow in cubic metres an hour. */
void show_flow(struct text *out, double flow, enum units units);
/* "gal", "L". */
const char *show_water_unit(enum units units);
/* Whole number with separators of thousands: 12,345. */
void show_count(struct text *out, int64_t count);
/* The same with so many decimal places (0..6): 12,345.67, -1.5. */
void show_decimal(struct text *out, double value, int places);

#endif
