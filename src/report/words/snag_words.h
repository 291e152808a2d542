/* Words of snags. */
#ifndef REPORT_WORDS_SNAG_WORDS_H
#define REPORT_WORDS_SNAG_WORDS_H

#include "report/words/words.h"

/* Where running bond is defined by joints a quarter of a unit apart. */
#define RUNNING_BOND_SOURCE "The Masonry Society, TMS 402/602, Building Code Requirements and " \
	"Specification for Masonry Structures, 2016; International Code Council, International " \
	"Residential Code (IRC), 2021; both as quoted"

/* "wall-jog". */
const char *snag_word(enum snag_code code);
/* "Wall jog". In report->words. */
const char *snag_heading(const struct report *report, enum snag_code code);
/* The source of its rule: a publication, or common practice; without figures in any units. */
const char *snag_source(enum snag_code code);
/* One sentence, with figures in the plot's units, in report->words. */
const char *snag_sentence(const struct report *report, const struct snag *snag);

/* What would cure a snag: attributes that could be set otherwise, all on one card, or a change of
 * the plan as it is drawn, or either; or another finished ground. */
enum { CURE_ATTRIBUTES = 3 };
struct cure {
	enum attribute attributes[CURE_ATTRIBUTES];
	int count;        /* of attributes */
	bool by_drawing, by_levels;
};
const struct cure *snag_cure(const struct snag *snag);
/* The card that has the attributes, as it is listed: "b Raised bed", "The plot itself"; NULL where
 * drawing alone is a cure. In report->words. */
const char *snag_card(const struct report *report, const struct snag *snag);
/* "Cure: Courses or Mulch on the card b Raised bed." In report->words. */
const char *snag_cure_sentence(const struct report *report, const struct snag *snag);

#endif
