/* The takeoff as text. */
#ifndef REPORT_TEXT_PRINT_H
#define REPORT_TEXT_PRINT_H

#include "base/measure.h"
#include "report/text/parts.h"
#include "report/words/alike.h"
#include "report/words/figures.h"
#include "report/words/item_words.h"
#include "report/words/page.h"
#include "takeoff/setout/setout.h"

/* Prints parts of the takeoff for people, a set as parts.h has it: papers of 80 columns, in the
 * plot's own units. Each has a head with the plot's name, and what to mind in a word; a part with
 * nothing to say is left out of the whole, and by itself says what the plot lacks. The first line
 * is "parterre takeoff 1". name: the plot file's. Pure. */
void report_text(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name, unsigned parts);

/* Prints the plan alone, whatever it takes, on sheets of 80 columns (report/drawing/cuts.h). Its
 * first line is "parterre plan 1". Pure. */
void report_plan(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

/* Prints the set-out sheet alone, however long it is, with all sheets of its plan. Its first line
 * is "parterre setout 1". Pure. */
void report_setout(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

/* Prints the snags alone, as the front of the takeoff has them; where there is none, a line that
 * says so. Its first line is "parterre snags 1". Pure. */
void report_snags(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name);

/* What is printed with: words in the arena. */
struct report report_of(struct sink *out, struct arena *words, const struct plot *plot,
	const struct takeoff *takeoff, const char *name);

/* The sections of the parts; each prints nothing where there is nothing to say. */

void print_front(const struct report *report);
void print_shopping(const struct report *report);
void print_programme(const struct report *report);
void print_setout(const struct report *report);
void print_levels(const struct report *report);
void print_services(const struct report *report); /* lines in the ground */
void print_by_hand(const struct report *report);  /* what is dug by hand near them */
void print_trenches(const struct report *report); /* of lines to lay, and sleeves */
void print_dig(const struct report *report);
void print_stone(const struct report *report);   /* bases and surfaces */
void print_fabric(const struct report *report);
void print_edging(const struct report *report);
void print_beds(const struct report *report);    /* the schedule */
void print_wall_levels(const struct report *report); /* of beds and their corners */
void print_walls(const struct report *report);   /* laying sheets */
void print_cutting(const struct report *report);
void print_liner(const struct report *report);
void print_fill(const struct report *report);
void print_fence(const struct report *report);
/* How the panels and posts of the fence with that index stand on ground that falls. */
void print_fence_levels(const struct report *report, int fence);
void print_lawn(const struct report *report);
void print_planting(const struct report *report); /* by place, by plant, by month */
void print_planted(const struct report *report);  /* plans of beds with their plants */
void print_first_year(const struct report *report); /* how they are kept */
void print_water(const struct report *report);       /* supply, lines and zones */
void print_drip(const struct report *report);        /* plans of beds with their lines */
void print_water_weeks(const struct report *report); /* by bed and month */
void print_header(const struct report *report);      /* from the tap, and parts */
void print_titled(const struct report *report);  /* trades that have a title (takeoff.h) */
void print_advice(const struct report *report);
void print_areas(const struct report *report);
void print_names(const struct report *report);   /* of regions that have names of their own */
void print_edges(const struct report *report);
void print_assumed(const struct report *report);

/* The plan with what its signs mean. Where it takes more sheets than PLAN_SHEETS_MOST only how
 * many, and what prints them. */
enum { PLAN_SHEETS_MOST = 9 };
void print_plan(const struct report *report);
/* The same with the numbers of set-out points. */
void print_plan_numbered(const struct report *report, const struct setout *setout);
void print_snags(const struct report *report);
void print_cautions(const struct report *report); /* in full */
/* For a plan by itself: its title, file and size; and all of its sheets with what they mean. */
void print_plan_head(const struct report *report);
/* The set-out by itself, all of it. */
void print_setout_all(const struct report *report);
/* The levels of its points, `most` of them, where the plot tells how its ground lies. */
void print_setout_levels(const struct report *report, const struct setout *setout, int most);
/* setout: that has its points numbered on it, or NULL. */
void print_drawing(const struct report *report, const struct setout *setout);
/* "Herb court, court.plot": the title, if there is one, and the file. */
const char *plot_named(const struct report *report);

/* For the sections. What prints a paragraph or a table clears report->words. */

/* The heading of a section within its part; where all parts are printed only a blank line. */
void print_section(const struct report *report, const char *words);
/* The same of a section that nothing but its heading tells from the next: there a line. */
void print_named_section(const struct report *report, const char *words);
/* A paragraph, its first line and all others indented by so many columns. */
void print_lines(const struct report *report, size_t first, size_t rest, const char *format, ...)
	__attribute__((format(printf, 4, 5)));
/* A paragraph with a blank line before it. */
void print_note(const struct report *report, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* The same of what explains: nothing where all parts are printed. */
void print_explained(const struct report *report, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* What is ordered of a section's goods, explained: nothing where all parts are printed. */
void print_ordered(const struct report *report, enum section section);
void print_blank(const struct report *report);

/* The last column of a table, made by hand. */
struct last_column {
	const char *heading;
	const char *(*cell)(const struct report *report, const void *row, const void *context);
	const void *context;
};
/* Declared rows as a table with a column for each figure that has a heading; `last` may be
 * NULL. Nothing where there is no row. */
void print_rows(const struct report *report, const struct figure_table *table, const void *rows,
	int count, size_t indent, const struct last_column *last);
/* The same, with rows that are alike (figures.h) as one. */
void print_alike(const struct report *report, const struct figure_table *table, const void *rows,
	int count);

/* Where more than these are alike, they are not named or listed one by one. */
enum { NAMED_MOST = 100 };
/* "B1, B2 and B5": the regions of a group of rows; of many "B1 to B800, B802 and 6,000 more". */
const char *group_words(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group);
/* "B1", or "B1 and B2: 2 beds" followed by `more`. */
const char *group_title(const struct report *report, const struct figure_table *table,
	const void *rows, const struct group *group, const char *more);
/* "3 ft to 8 ft"; "3 ft" where both are the same. */
const char *span_words(const struct report *report, nm from, nm to);
/* "2 of 7 7/8 in + 1 of 3 in": the lengths to saw one block or piece into, each `fit` shorter
 * than its place. */
const char *cut_words(const struct report *report, const struct cut *cut, nm fit);
/* The length to saw a piece to: `fit` shorter than its place, half of that at least, down to what
 * a rule shows: 1/16 in or 1 mm. */
nm saw_length(const struct report *report, nm place, nm fit);
/* What the plot, the price book or the default allows for: a weight or a volume. */
const char *allowed_words(const struct report *report, enum attribute a);
/* "2 into 1 of 63 1/8 in; 1 into 2 of 45 7/8 in": all cuts of blocks or pieces. */
const char *cuts_words(const struct report *report, const struct cut *cuts, int count, nm fit);

#endif
