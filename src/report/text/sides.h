/* The sides of a wall as its laying sheet has them, and which of them are laid alike. */
#ifndef REPORT_TEXT_SIDES_H
#define REPORT_TEXT_SIDES_H

#include "base/groups.h"
#include "report/text/strip.h"

/* The runs of a side. */
enum course_kind { COURSE_ODD, COURSE_EVEN, COURSE_CAP, COURSE_KINDS };
extern const char *const course_names[COURSE_KINDS]; /* "odd" */

/* Without runs where the wall has no such course. */
const struct wall_course *course_of(const struct wall *wall, enum course_kind kind);
/* How many of them are laid. */
int courses_of(const struct wall *wall, enum course_kind kind);
enum block_use course_use(enum course_kind kind);

struct wall_sides {
	const struct wall *wall;
	const struct outline *outline; /* of its bed */
	nm cell;
};

/* A side's run; side: counted over all loops, as in a course. */
struct strip sides_strip(const struct wall_sides *sides, int side, enum course_kind kind);
/* What the strips of a side are drawn by. */
struct strip_scale sides_scale(const struct wall_sides *sides, int side, enum course_kind kind);

/* Which way the side's outer face looks on the plan: "up". */
const char *sides_facing(const struct wall_sides *sides, int side);

/* How a side is laid as another one is: bits, none of them: as it is. */
enum {
	LIKE_BACK = 1,      /* from its last corner to its first */
	LIKE_EXCHANGED = 2, /* odd courses as even ones, even ones as odd ones */
	LIKE_WAYS = 4
};
/* Groups the sides of a wall that are laid alike in one of the ways. To be freed. */
struct groups sides_alike(const struct wall_sides *sides);
/* The first way in which a side is laid as another of its group. */
int sides_way(const struct wall_sides *sides, int side, int other);

#endif
