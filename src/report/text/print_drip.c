#include "report/text/bed_sheet.h"
#include "base/number.h"
#include "base/stop.h"

#include <string.h>

/* With its heading, rulers and what it means on one page (paged.h). */
enum { ROWS_MOST = 50 };

#define EMITTER 'o'
#define HEADER '%' /* as on the plan of all */

/* The plan of a bed with its drip lines. */
struct dripping {
	struct bed_sheet sheet;
	const struct watered *bed;
	char tube;  /* its sign: lines go one way in a bed */
	int hidden; /* emitters whose character another one has */
	int numbered; /* lines whose number had room */
};

static char *character(const struct dripping *dripping, struct place at)
{
	return bed_sheet_character(&dripping->sheet, at.x, at.y);
}

/* Of what is taped from the bed's corner. */
static struct place place_of(const struct dripping *dripping, nm along, nm across)
{
	const struct bed_sheet *sheet = &dripping->sheet;
	nm cell = sheet->report->takeoff->survey.cell;
	bool is_upright = dripping->bed->drip.ground.is_upright;

	return bed_sheet_nearest(sheet, (struct spot){
		sheet->cells.left * cell + (is_upright ? across : along),
		sheet->cells.top * cell + (is_upright ? along : across) });
}

static bool is_ground(const struct dripping *dripping, struct place at)
{
	char here = *character(dripping, at);

	return here == ' ' || here == dripping->tube;
}

/* Straight from one to the other; a drip tube within the outline, the header on it as well. */
static void draw_run(const struct dripping *dripping, struct place from, struct place to,
	char tube)
{
	int dx = sign(to.x - from.x), dy = sign(to.y - from.y);

	for (struct place at = from;; at.x += dx, at.y += dy) {
		if (is_ground(dripping, at) ||
			(tube == HEADER && *character(dripping, at) != EMITTER))
			*character(dripping, at) = tube;
		if (at.x == to.x && at.y == to.y)
			break;
	}
}

/* ---- Lines ----------------------------------------------------------------------------------- */

static struct place emitter_place(const struct dripping *dripping, const struct drip_line *line,
	int64_t number)
{
	nm from = line->chord.from;

	return place_of(dripping, from + drip_place(line->chord.to - from, line->emitters, number),
		line->across);
}

static void draw_line(struct dripping *dripping, const struct drip_line *line)
{
	draw_run(dripping, place_of(dripping, line->chord.from, line->across),
		place_of(dripping, line->chord.to, line->across), dripping->tube);
	for (int64_t i = 0; i < line->emitters && !stop_asked(); i++) {
		char *at = character(dripping, emitter_place(dripping, line, i));

		dripping->hidden += *at == EMITTER;
		*at = EMITTER;
	}
}

/* Behind its first emitter, where all of it has room. */
static void draw_number(struct dripping *dripping, int number)
{
	const struct drip_line *line = &dripping->bed->drip.lines[number - 1];
	struct place at = emitter_place(dripping, line, 0);
	const char *words = say(dripping->sheet.report, "%d", number);
	int length = (int)strlen(words);

	if (dripping->bed->drip.ground.is_upright)
		at.y++;
	else
		at.x++;
	if (at.x + length > dripping->sheet.columns || at.y >= dripping->sheet.rows)
		return;
	for (int i = 0; i < length; i++)
		if (!is_ground(dripping, (struct place){ at.x + i, at.y }))
			return;
	memcpy(character(dripping, at), words, (size_t)length);
	dripping->numbered++;
}

/* ---- The header ------------------------------------------------------------------------------ */

static void draw_header(void *dripping, struct bed_point from, struct bed_point to)
{
	draw_run(dripping, place_of(dripping, from.along, from.across),
		place_of(dripping, to.along, to.across), HEADER);
}

/* ---- Printing -------------------------------------------------------------------------------- */

static const char *number_words(const struct dripping *dripping)
{
	return dripping->numbered == 0 ? "" : dripping->numbered == dripping->bed->drip.count ?
		" with its line's number" : " with its line's number where there is room";
}

static const char *header_words(const struct dripping *dripping)
{
	return !dripping->bed->is_reached ?
		"the header lies along one end of them" :
		"% header, which comes in where that is in the bed's line";
}

static void print_bed(const struct report *report, const struct watered *bed)
{
	struct dripping dripping = { .bed = bed, .tube = bed->drip.ground.is_upright ? ':' : '=' };

	bed_sheet_begin(&dripping.sheet, report, bed->region, ROWS_MOST);
	for (int i = 0; i < bed->drip.count && !stop_asked(); i++)
		draw_line(&dripping, &bed->drip.lines[i]);
	if (bed->is_reached)
		bed_header_stretches(&bed->header, draw_header, &dripping);
	for (int i = 1; i <= bed->drip.count && bed->drip.count > 1 && !stop_asked(); i++)
		draw_number(&dripping, i);
	bed_sheet_print(&dripping.sheet);
	print_lines(report, 0, 0, "%c drip tube%s; o emitter; %s. %s%s", dripping.tube,
		number_words(&dripping), header_words(&dripping),
		bed_sheet_scale_words(&dripping.sheet), dripping.hidden == 0 ? "" :
		say(report, " %s where another one has the character.",
			word_count(report, dripping.hidden, "emitter is", "emitters are")));
	bed_sheet_end(&dripping.sheet);
}

/* Of one layout, into which the header comes alike. */
static bool are_alike(const void *one, const void *other, const void *table)
{
	const struct watered *a = one, *b = other;

	return rows_are_alike(a, b, table) && a->is_reached == b->is_reached &&
		a->header.comes_in.along == b->header.comes_in.along &&
		a->header.comes_in.across == b->header.comes_in.across;
}

void print_drip(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;
	struct groups groups = groups_make(watering->list, watering->count,
		sizeof *watering->list, &(struct alike){ are_alike, rows_hash, &watered_table });

	for (int i = 0; i < groups.count && i < NAMED_MOST && !stop_asked(); i++) {
		const struct group *group = &groups.list[i];

		print_named_section(report, say(report, "%s: drip lines",
			group_words(report, &watered_table, watering->list, group)));
		print_bed(report, &watering->list[group->members[0]]);
	}
	if (groups.count > NAMED_MOST)
		print_note(report, "No plan here of beds of %s more kinds: JSON has their lines "
			"(takeoff --json).", plain_count(report, groups.count - NAMED_MOST));
	groups_fini(&groups);
}
