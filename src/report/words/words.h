/* Words of figures, for all views and the editor, all in report->words: in a view they last
 * until the next paragraph or row is printed. */
#ifndef REPORT_WORDS_WORDS_H
#define REPORT_WORDS_WORDS_H

#include "report/words/report.h"

const char *say(const struct report *report, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* Moves the text into report->words. */
const char *say_text(const struct report *report, struct text *text);

const char *plain_count(const struct report *report, int64_t count);
const char *plain_decimal(const struct report *report, double number, int places);
const char *plain_length(const struct report *report, nm length);
/* As read off a rule: inches without feet. */
const char *plain_inches(const struct report *report, nm length);
/* As read off a rule with care: to 1/64 in or 1/100 mm. */
const char *plain_piece(const struct report *report, nm length);
/* Exact, as spelled in a plot. */
const char *exact_length(const struct report *report, nm length);
const char *plain_area(const struct report *report, double area);
const char *plain_volume(const struct report *report, double volume);
/* In the unit that the volume `like` would have. */
const char *plain_volume_like(const struct report *report, double volume, double like);
const char *plain_weight(const struct report *report, double weight);
const char *plain_water(const struct report *report, double water);
const char *plain_flow(const struct report *report, double flow);
const char *plain_money(const struct report *report, money amount); /* "1,234.50" */
/* "16 in x 8 in x 6 in" */
const char *plain_size(const struct report *report, const struct size *size);
/* "4 ft x 3 ft": so many columns and rows of the plot's cells; "4 ft": so many sides of cells;
 * "4 ft across, 3 ft down", and in a table "4 ft, 3 ft": the near corner of a cell. */
const char *plain_cells(const struct report *report, int64_t columns, int64_t rows);
const char *plain_sides(const struct report *report, int64_t sides);
const char *plain_place(const struct report *report, struct place cell);
const char *plain_corner(const struct report *report, struct place cell);
/* "b Raised bed", ". open ground". */
const char *plain_letter(const struct report *report, char letter);
/* "B1"; "" for NO_REGION. */
const char *plain_region(const struct report *report, int region);
/* "B1 Sage": with its own name, where it has one. */
const char *plain_named_region(const struct report *report, int region);

/* The same, without a blank at which the text might break a line. */
const char *word_length(const struct report *report, nm length);
const char *word_inches(const struct report *report, nm length);
const char *word_piece(const struct report *report, nm length);
const char *word_area(const struct report *report, double area);
const char *word_volume(const struct report *report, double volume);
const char *word_weight(const struct report *report, double weight);
const char *word_water(const struct report *report, double water);
const char *word_flow(const struct report *report, double flow);
/* May be broken only around the x's. */
const char *word_size(const struct report *report, const struct size *size);
/* "1 bed", "2 beds". */
const char *word_count(const struct report *report, int64_t count, const char *one,
	const char *many);
/* A copy whose first letter is a capital one: "Services". */
const char *capital(const struct report *report, const char *words);
/* A copy with ties for blanks, and one with blanks for ties. */
const char *tied(const struct report *report, const char *words);
const char *untied(const struct report *report, const char *words);

#endif
