#include "report/text/print_strips.h"
#include "base/stop.h"
#include "report/text/print.h"
#include "report/text/sides.h"

#include <ctype.h>

/* What a run with a joint more or fewer than pieces has to say: the stone is a joint longer or
 * shorter than places are. */
static void print_joint(const struct report *report, const struct wall *wall,
	const struct strip *strip)
{
	int butts = !strip->through[0] + !strip->through[1];
	bool is_fewer = butts == 0, is_sawn = false;
	const char *joint = word_inches(report, wall->joint);

	if (wall->joint == 0 || butts == 1)
		return;
	for (int i = 0; i < strip->count; i++)
		is_sawn = is_sawn || strip->pieces[i] < strip->block;
	if (is_sawn)
		print_lines(report, STRIP_INDENT, STRIP_INDENT, "One sawn piece %s %s.", joint,
			is_fewer ? "longer" : "shorter");
	else if (strip->count == 1 && is_fewer)
		print_lines(report, STRIP_INDENT, STRIP_INDENT, "%s stays open.", joint);
	else
		print_lines(report, STRIP_INDENT, STRIP_INDENT, "Joints %s, %s in all.",
			is_fewer ? "wider" : "narrower", joint);
}

static const char *const way_words[LIKE_WAYS] = { /* NULL: as the first */
	[LIKE_BACK] = "From the last corner",
	[LIKE_EXCHANGED] = "Odd and even exchanged",
	[LIKE_BACK | LIKE_EXCHANGED] = "From the last corner, odd and even exchanged",
};

/* The sides of a group while they are named: "side 1 up, 3 down, hole 1 side 2 left". */
struct naming {
	const struct wall_sides *sides;
	struct text words;
	int loop; /* of the side named last; NO_LOOP */
};
enum { NO_LOOP = -1 };

static void name_side(struct naming *naming, int side)
{
	const struct wall_run *run = &naming->sides->wall->odd.runs[side];

	if (run->loop != naming->loop && run->loop > 0)
		text_print(&naming->words, "hole%c%d%c", PAGE_TIE, run->loop, PAGE_TIE);
	if (run->loop != naming->loop)
		text_print(&naming->words, "side%c", PAGE_TIE);
	naming->loop = run->loop;
	text_print(&naming->words, "%d%c%s", run->side + 1, PAGE_TIE,
		sides_facing(naming->sides, side));
}

/* Those that are laid in one way as the group's first. */
static void name_sides(struct naming *naming, const struct group *group, int way)
{
	int count = 0;

	for (int i = 0; i < group->count && !stop_asked(); i++) {
		if (sides_way(naming->sides, group->members[0], group->members[i]) != way)
			continue;
		if (count++ > 0)
			text_add(&naming->words, ", ");
		else if (way_words[way])
			text_print(&naming->words, ". %s: ", way_words[way]);
		name_side(naming, group->members[i]);
	}
}

/* "Side 1 up, 3 down: 4 ft. Odd and even exchanged: 2 right, 4 left." */
static void print_title(const struct report *report, const struct wall_sides *sides,
	const struct group *group)
{
	struct naming naming = { sides, TEXT_EMPTY, NO_LOOP };

	name_sides(&naming, group, 0);
	text_print(&naming.words, ": %s",
		word_length(report, sides_strip(sides, group->members[0], COURSE_ODD).side));
	naming.words.bytes[0] = (char)toupper((unsigned char)naming.words.bytes[0]);
	for (int way = 1; way < LIKE_WAYS; way++)
		name_sides(&naming, group, way);
	print_lines(report, 2, 4, "%s.", say_text(report, &naming.words));
}

static void print_group(const struct report *report, const struct wall_sides *sides, int side,
	const struct all_sawn *all)
{
	for (int i = 0; i < COURSE_KINDS; i++) {
		enum course_kind kind = (enum course_kind)i;
		struct strip strip = sides_strip(sides, side, kind);
		struct strip_scale scale = sides_scale(sides, side, kind);

		if (strip.count == 0)
			continue;
		strip_print(report, course_names[kind], &strip, &scale,
			all_sawn_of(all, sides->wall, course_use(kind)));
		print_joint(report, sides->wall, &strip);
	}
}

void print_strips(const struct report *report, const struct wall *wall, const struct all_sawn *all)
{
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	struct wall_sides sides = { wall, &outline, report->takeoff->survey.cell };
	struct groups groups;

	outline_trace(&outline, &arena, report->plot, &report->takeoff->survey, wall->region);
	groups = sides_alike(&sides);
	for (int i = 0; i < groups.count && !stop_asked(); i++) {
		print_title(report, &sides, &groups.list[i]);
		print_group(report, &sides, groups.list[i].members[0], all);
	}
	groups_fini(&groups);
	arena_clear(&arena);
}
