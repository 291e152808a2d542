#include "report/text/sawn_places.h"
#include "base/hash.h"
#include "base/stop.h"
#include "report/text/print.h"
#include "report/text/sides.h"

#include <stdlib.h>

/* How many are named of each. */
enum { BEDS_LISTED = 3, SHEETS_LISTED = 3, SIDES_LISTED = 8 };

enum { NO_SHEET = -1 };

/* What was said of one size so far. */
struct said {
	struct text *words;
	int sheet;            /* the last that has such pieces; NO_SHEET */
	int sheets, sides;    /* named; sides: of that sheet */
	int64_t pieces;       /* on the side named last */
	int64_t more_pieces;  /* of that sheet's bed, not named */
	int64_t more_beds;    /* of all sheets */
};

struct teller {
	const struct report *report;
	const struct sawn *sawn;
	const struct groups *sheets; /* of walls; each has the pieces of its first */
	struct said *said;           /* by size */
};

static void end_sheet(const struct teller *teller, struct said *said)
{
	if (said->more_pieces > 0)
		text_print(said->words, " and %s on other sides",
			plain_count(teller->report, said->more_pieces));
	said->more_pieces = 0;
	said->sides = 0;
}

/* "B1", "each of B1 and B2", "each of B1 and 47 like it". */
static const char *beds_words(const struct teller *teller, const struct group *group)
{
	const struct report *report = teller->report;
	const struct walls *walls = &report->takeoff->walls;

	if (group->count > BEDS_LISTED)
		return say(report, "each of %s and %s like it",
			plain_region(report, walls->list[group->members[0]].region),
			plain_count(report, group->count - 1));
	return say(report, "%s%s", group->count > 1 ? "each of " : "",
		group_words(report, &wall_table, walls->list, group));
}

static void begin_sheet(const struct teller *teller, struct said *said, int sheet)
{
	const struct group *group = &teller->sheets->list[sheet];

	end_sheet(teller, said);
	said->sheet = sheet;
	if (said->sheets == SHEETS_LISTED) {
		said->more_beds += group->count;
		return;
	}
	text_print(said->words, "%s%s:", said->sheets > 0 ? "; " : "", beds_words(teller, group));
	said->sheets++;
}

/* "hole 1 side 2 odd", of a cap "side 2". */
static const char *side_words(const struct report *report, const struct wall_run *run,
	enum course_kind kind)
{
	return tied(report, say(report, "%sside %d%s%s",
		run->loop > 0 ? say(report, "hole %d ", run->loop) : "", run->side + 1,
		kind == COURSE_CAP ? "" : " ", kind == COURSE_CAP ? "" : course_names[kind]));
}

/* So many pieces on a run. */
static void tell(const struct teller *teller, int size, int sheet, const struct wall_run *run,
	enum course_kind kind, int64_t pieces)
{
	const struct report *report = teller->report;
	struct said *said = &teller->said[size];
	bool is_first = said->sheet != sheet;

	if (is_first)
		begin_sheet(teller, said, sheet);
	if (said->more_beds > 0)
		return;
	if (said->sides == SIDES_LISTED) {
		said->more_pieces += pieces;
		return;
	}
	text_print(said->words, "%s ", is_first ? "" : ",");
	if (is_first || pieces != said->pieces)
		text_print(said->words, "%s%ceach on ", plain_count(report, pieces), PAGE_TIE);
	text_add(said->words, side_words(report, run, kind));
	said->pieces = pieces;
	said->sides++;
}

/* Tells of the sawn pieces of a run, size by size; `times` such runs are laid. */
static void tell_run(const struct teller *teller, int sheet, const struct wall_run *run,
	enum course_kind kind, int times)
{
	nm block = teller->sawn->cutting->block.along;

	for (int i = 0; i < run->piece_count; i++) {
		nm piece = run->pieces[i];
		int alike = 0;

		if (piece >= block)
			continue;
		for (int j = 0; j < i; j++)
			alike += run->pieces[j] == piece;
		if (alike > 0)
			continue; /* told already */
		for (int j = i; j < run->piece_count; j++)
			alike += run->pieces[j] == piece;
		tell(teller, sawn_size(teller->sawn, piece), sheet, run, kind,
			(int64_t)alike * times);
	}
}

static void tell_wall(const struct teller *teller, int sheet, const struct wall *wall)
{
	for (int side = 0; side < wall->odd.run_count && !stop_asked(); side++) {
		for (int i = 0; i < COURSE_KINDS; i++) {
			enum course_kind kind = (enum course_kind)i;
			const struct wall_course *course = course_of(wall, kind);

			if (course->cut > 0 && sawn_is_of(teller->sawn, wall, course_use(kind)))
				tell_run(teller, sheet, &course->runs[side], kind,
					courses_of(wall, kind));
		}
		arena_clear(teller->report->words);
	}
}

/* ---- All walls ------------------------------------------------------------------------------- */

static bool are_like(const void *a, const void *b, const void *context)
{
	const struct wall *one = a, *other = b;

	(void)context;
	return one->like == other->like;
}

static uint64_t hash_like(const void *item, const void *context)
{
	const struct wall *wall = item;

	(void)context;
	return hash_bytes(HASH_EMPTY, &wall->like, sizeof wall->like);
}

struct text *sawn_places(const struct report *report, const struct sawn *sawn)
{
	const struct walls *walls = &report->takeoff->walls;
	struct text *places = memory_new((size_t)sawn->count + 1, sizeof *places);
	struct said *said = memory_new((size_t)sawn->count + 1, sizeof *said);
	struct groups sheets = groups_make(walls->list, walls->count, sizeof *walls->list,
		&(struct alike){ are_like, hash_like, NULL });
	const struct teller teller = { report, sawn, &sheets, said };

	for (int i = 0; i <= sawn->count; i++) {
		places[i] = TEXT_EMPTY;
		said[i] = (struct said){ .words = &places[i], .sheet = NO_SHEET };
	}
	for (int i = 0; i < sheets.count && !stop_asked(); i++)
		tell_wall(&teller, i, &walls->list[sheets.list[i].members[0]]);
	for (int i = 0; i < sawn->count; i++) {
		end_sheet(&teller, &said[i]);
		if (said[i].more_beds > 0)
			text_print(&places[i], " and %s", word_count(report, said[i].more_beds,
				"more bed", "more beds"));
	}
	arena_clear(report->words);
	groups_fini(&sheets);
	free(said);
	return places;
}

void sawn_places_free(struct text *places, const struct sawn *sawn)
{
	for (int i = 0; i <= sawn->count; i++)
		text_fini(&places[i]);
	free(places);
}
