#include "report/text/print.h"
#include "base/hash.h"
#include "base/memory.h"
#include "base/number.h"
#include "base/stop.h"
#include "report/text/print_strips.h"
#include "report/text/sides.h"

#include <stdint.h>
#include <stdlib.h>

/* ---- What a bed takes ------------------------------------------------------------------------ */

/* "17 whole and 4 sawn". */
static const char *blocks_words(const struct report *report, int64_t whole, int64_t cut)
{
	const char *words = word_count(report, whole, "whole", "whole");

	return cut == 0 ? words : say(report, "%s and %s", words,
		word_count(report, cut, "sawn", "sawn"));
}

/* Which letters a course has: bit by size, the last for all sizes without one. */
static uint64_t letters_of(const struct wall_course *course, const struct sawn *sawn)
{
	nm block = sawn->cutting->block.along;
	uint64_t letters = 0;

	for (int i = 0; i < course->run_count && course->cut > 0 && !stop_asked(); i++) {
		const struct wall_run *run = &course->runs[i];

		for (int j = 0; j < run->piece_count; j++)
			if (run->pieces[j] < block)
				letters |= UINT64_C(1) << least(sawn_size(sawn, run->pieces[j]),
					SAWN_LETTERS);
	}
	return letters;
}

/* "a 7 7/8 in, b 3 7/8 in": to what they are sawn. */
static const char *letters_words(const struct report *report, uint64_t letters,
	const struct sawn *sawn)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < sawn->count && i < SAWN_LETTERS; i++)
		if (letters >> i & 1)
			text_print(&words, "%s%c%c%s", words.length > 0 ? ", " : "",
				sawn_letter(i), PAGE_TIE, word_inches(report, saw_length(report,
				sawn->sizes[i].place, sawn->cutting->gap)));
	if (letters >> SAWN_LETTERS & 1)
		text_print(&words, "%s%c%cas%cmeasured", words.length > 0 ? ", " : "",
			SAWN_UNNAMED, PAGE_TIE, PAGE_TIE);
	return say_text(report, &words);
}

/* Of one bed: "48 whole and 8 sawn (a 7 7/8 in)". */
static const char *wall_words(const struct report *report, const struct wall *wall,
	const struct sawn *sawn)
{
	uint64_t letters = letters_of(&wall->odd, sawn) | letters_of(&wall->even, sawn);
	const char *words = blocks_words(report, wall->whole_blocks, wall->cut_pieces);

	return letters == 0 ? words : say(report, "%s (%s)", words,
		letters_words(report, letters, sawn));
}

static const char *cap_words(const struct report *report, const struct wall *wall,
	const struct sawn *sawn)
{
	uint64_t letters = letters_of(&wall->cap, sawn);
	const char *words = blocks_words(report, wall->cap.whole, wall->cap.cut);

	return letters == 0 ? words : say(report, "%s (%s)", words,
		letters_words(report, letters, sawn));
}

/* ---- A sheet for beds that are images of one another ----------------------------------------- */

static const char *const turn_words[TURNS] = {
	[TURN_LEFT_RIGHT] = "left for right",
	[TURN_TOP_BOTTOM] = "top for bottom",
	[TURN_HALF] = "turned half round",
	[TURN_QUARTER] = "turned a quarter to the right",
	[TURN_QUARTER_BACK] = "turned a quarter to the left",
	[TURN_FALLING] = "turned a quarter to the right, then left for right",
	[TURN_RISING] = "turned a quarter to the right, then top for bottom",
};

/* Walls with the same pieces, turned in the same way. */
static bool are_turned_alike(const void *a, const void *b, const void *context)
{
	const struct wall *one = a, *other = b;

	(void)context;
	return one->like == other->like && one->turn == other->turn;
}

static uint64_t hash_turned(const void *item, const void *context)
{
	const struct wall *wall = item;
	const int values[] = { wall->like, (int)wall->turn };

	(void)context;
	return hash_bytes(HASH_EMPTY, values, sizeof values);
}

/* Groups of walls, and of each that has a sheet those that are its images, by turn: numbers from
 * 1; 0: none. */
struct sheets {
	const struct walls *walls;
	struct groups groups;
	int (*images)[TURNS];
	bool has_images;
	struct all_sawn sawn;
};

static struct sheets make_sheets(const struct walls *walls, const struct cuttings *cuttings)
{
	struct sheets sheets = { .walls = walls, .groups = groups_make(walls->list, walls->count,
		sizeof *walls->list, &(struct alike){ are_turned_alike, hash_turned, NULL }),
		.sawn = all_sawn_make(cuttings) };

	sheets.images = memory_new((size_t)sheets.groups.count, sizeof *sheets.images);
	for (int i = 0; i < sheets.groups.count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[sheets.groups.list[i].members[0]];
		const struct wall *like = walls_find(walls, wall->like);

		if (wall->turn == TURN_NONE)
			continue;
		sheets.images[sheets.groups.of[like - walls->list]][wall->turn] = i + 1;
		sheets.has_images = true;
	}
	return sheets;
}

/* "B2 and B6: B1, left for right." for each image; false where there is none. */
static bool print_images(const struct report *report, const struct sheets *sheets, int at)
{
	const struct walls *walls = sheets->walls;
	const struct wall *wall = &walls->list[sheets->groups.list[at].members[0]];
	bool has_any = false;

	for (int turn = 0; turn < TURNS; turn++) {
		int image = sheets->images[at][turn];

		if (image == 0)
			continue;
		has_any = true;
		print_lines(report, 2, 4, "%s: %s, %s.", group_words(report, &wall_table,
			walls->list, &sheets->groups.list[image - 1]),
			plain_region(report, wall->region), turn_words[turn]);
	}
	return has_any;
}

static void print_sheet(const struct report *report, const struct sheets *sheets, int at)
{
	const struct group *group = &sheets->groups.list[at];
	const struct wall *wall = &sheets->walls->list[group->members[0]];
	bool is_for_several;

	print_blank(report);
	print_lines(report, 0, 2, "%s", group_title(report, &wall_table, sheets->walls->list, group,
		", alike piece for piece"));
	is_for_several = print_images(report, sheets, at) || group->count > 1;
	print_lines(report, 2, 2, "%s of block %s, each %s.%s %s %s, %s%s.",
		word_count(report, wall->courses, "course", "courses"),
		word_size(report, &wall->block), plain_weight(report, wall->block_weight),
		wall->joint == 0 ? "" : say(report, " Of its length %s is joint.",
		word_inches(report, wall->joint)),
		is_for_several ? "One bed takes" : "It takes",
		wall_words(report, wall, all_sawn_of(&sheets->sawn, wall, USE_WALL)),
		word_weight(report, wall->weight),
		!wall->has_cap ? "" : say(report, "; of cap %s %s",
		word_size(report, &wall->cap_block),
		cap_words(report, wall, all_sawn_of(&sheets->sawn, wall, USE_CAP))));
	print_strips(report, wall, &sheets->sawn);
}

static bool has_minus(const struct wall_course *course)
{
	for (int i = 0; i < course->run_count; i++)
		if (course->runs[i].from < 0)
			return true;
	return false;
}

/* Whether any run begins before its side does, as it can at an inner corner. */
static bool begins_before_a_corner(const struct walls *walls)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		if (has_minus(&wall->odd) || has_minus(&wall->even) || has_minus(&wall->cap))
			return true;
	}
	return false;
}

/* "Adhesive: 2 beads under every course but the first and under the cap." */
static const char *adhesive_words(const struct report *report)
{
	uint64_t facts = report->takeoff->work.facts;

	if (!(facts & FACT(ADHESIVE)))
		return "";
	return say(report, " Adhesive: %s under every course but the first%s, none in upright "
		"joints.", word_count(report, block_number(report->takeoff->allow, ALLOW_BEADS),
		"bead", "beads"), facts & FACT(CAPS) ? " and under the cap" : "");
}

/* What is the same on every sheet. */
static void print_legend(const struct report *report, const struct sheets *sheets)
{
	const struct walls *walls = sheets->walls;

	print_lines(report, 0, 0, "Strips: sides seen from within the bed, to scale, first corner "
		"left. Side 1 starts at the topmost, then leftmost corner, the bed on the right "
		"hand; up, right: where it faces on the plan. Marks: %s from the first corner "
		"along the outer face%s. An end goes through its corner or butts against the "
		"other. Course 1, on the base, is odd. Letters: sawn, the block's own end outside "
		"at a corner.%s%s",
		report->units == UNITS_METRIC ? "millimetres" : "inches",
		begins_before_a_corner(walls) ? "; with a minus: before that corner" : "",
		adhesive_words(report),
		sheets->has_images ? " A bed that is an image of another is laid by that one's "
		"sheet, turned or seen in a mirror as it says." : "");
}

void print_walls(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	struct sheets sheets;

	if (walls->count == 0)
		return;
	sheets = make_sheets(walls, &report->takeoff->cuttings);
	if (!report->is_whole) {
		page_heading(report->out, "Laying sheets");
		print_legend(report, &sheets);
	}
	for (int i = 0; i < sheets.groups.count && !stop_asked(); i++)
		if (walls->list[sheets.groups.list[i].members[0]].turn == TURN_NONE)
			print_sheet(report, &sheets, i);
	groups_fini(&sheets.groups);
	all_sawn_fini(&sheets.sawn);
	free(sheets.images);
}
