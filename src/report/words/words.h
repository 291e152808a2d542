/* Words that several sections of the text use. */
#ifndef REPORT_WORDS_WORDS_H
#define REPORT_WORDS_WORDS_H

#include "report/words/groups.h"
#include "report/words/page.h"
#include "report/words/report.h"

/* Adds a length that no line break will split. */
void word_length(struct text *text, const struct report *report, nm length);
/* The same as a rule reads it: inches without feet. */
void word_inches(struct text *text, const struct report *report, nm length);
void word_area(struct text *text, const struct report *report, double area);
void word_volume(struct text *text, const struct report *report, double volume);
void word_weight(struct text *text, const struct report *report, double weight);
/* "16 in x 8 in x 6 in". */
void word_size(struct text *text, const struct report *report, const struct size *size);
/* "B1". */
void word_region(struct text *text, const struct report *report, int region);
/* A piece is sawn shorter than its place by the play that is allowed for. */
nm word_saw_length(nm place, nm fit);
/* "2 of 7 7/8 in + 1 of 3 in": the lengths to saw one block or piece into. */
void word_cut(struct text *text, const struct report *report, const struct cut *cut, nm fit);
/* So much of an item, in its unit as people read it. */
void word_amount(struct text *text, const struct report *report, const struct item *item, double amount);
/* "1 bed", "2 beds". */
void word_count(struct text *text, int64_t count, const char *one, const char *many);
/* "B1, B2 and B5": region_of gives the region of an item of the grouped list. */
void word_group(struct text *text, const struct report *report, const struct group *group,
	int (*region_of)(const struct takeoff *, int));
/* Beds whose cap is wanted but not laid out. */
int64_t caps_not_laid(const struct takeoff *takeoff);

#endif
