#include "report/text/setout_words.h"
#include "report/drawing/fence_lines.h"
#include "report/words/page.h"
#include "takeoff/common/basis.h"

struct setout setout_of(const struct report *report, struct arena *arena)
{
	struct setout setout;

	setout_make(&setout, arena, &report->takeoff->plot, &report->takeoff->survey,
		&report->takeoff->fences);
	return setout;
}

const char *tape_words(const struct report *report, nm length)
{
	return word_length(report, setout_rounded(length, report->units));
}

const char *reading_words(const struct report *report, nm drop)
{
	return word_inches(report, setout_rounded(drop, report->units));
}

const char *tie_words(const struct report *report, const struct tie *tie)
{
	return say(report, "%s%cfrom%c\"%s\"", tape_words(report, tie->length), PAGE_TIE, PAGE_TIE,
		tie->name);
}

const char *tied_place_words(const struct report *report, const struct setout *setout,
	const struct tie *tie)
{
	nm cell = setout->survey->cell;

	return tie->at.x == 0 && tie->at.y == 0 ? "the datum" : say(report,
		"%s%cacross, %s%cdown", tape_words(report, tie->at.x * cell), PAGE_TIE,
		tape_words(report, tie->at.y * cell), PAGE_TIE);
}

const char *string_place_words(const struct report *report, const struct setout_string *string)
{
	return say(report, "%s%c%s", tape_words(report, string->at), PAGE_TIE,
		string->is_upright ? "across" : "down");
}

static const char *frame_words(const struct setout_string *string)
{
	if (!string->is_frame)
		return "";
	if (string->is_upright)
		return string->at == 0 ? "left edge" : "right edge";
	return string->at == 0 ? "base line" : "bottom edge";
}

const char *guides_words(const struct report *report, const struct setout *setout,
	const struct setout_string *string)
{
	struct text words = TEXT_EMPTY;
	int more = string->guide_count - SETOUT_NAMED_MOST;

	text_add(&words, frame_words(string));
	for (int i = 0; i < string->guide_count && i < SETOUT_NAMED_MOST; i++) {
		const struct setout_guided *guided = &string->guides[i];

		text_print(&words, "%s%s", i > 0 ? ", " : words.length ? "; " : "",
			guided->is_fence ? setout->fences->list[guided->index].name :
			plain_region(report, guided->index));
	}
	if (more > 0)
		text_print(&words, " and%c%s%cmore", PAGE_TIE, plain_count(report, more), PAGE_TIE);
	return say_text(report, &words);
}

const char *point_name_words(const struct report *report, const struct setout_point *point)
{
	char name[FENCE_NAME_MOST];

	switch (point->kind) {
	case SETOUT_CORNER:
		break;
	case SETOUT_POST:
		fence_post_name(point->mark.fence, point->mark.index, name);
		return say(report, "post%c%s", PAGE_TIE, name);
	case SETOUT_GATE:
		fence_gate_name(point->mark.fence, point->mark.index, name);
		return say(report, "gate%c%s", PAGE_TIE, name);
	}
	return say(report, "%d", point->number);
}

const char *point_place_words(const struct report *report, const struct setout_string *string,
	const struct setout_point *point)
{
	const char *at = tape_words(report, string->is_upright ? point->at.y : point->at.x);

	return point->kind != SETOUT_GATE ? at : say(report, "%s%cto%c%s", at, PAGE_TIE, PAGE_TIE,
		tape_words(report, string->is_upright ? point->to.y : point->to.x));
}

/* "from stakes 1 ft across to boards 15 ft across" */
static const char *from_to_words(const struct report *report, const struct setout_end *from,
	const struct setout_end *to, const char *way)
{
	return say(report, "from %s %s%c%s to %s %s%c%s", from->is_stake ? "stakes" : "boards",
		tape_words(report, from->at), PAGE_TIE, way, to->is_stake ? "stakes" : "boards",
		tape_words(report, to->at), PAGE_TIE, way);
}

/* ", 2 stakes under each" */
static const char *between_words(const struct report *report, int stakes)
{
	return stakes == 0 ? "" : say(report, ", %s under each",
		word_count(report, stakes, "stake", "stakes"));
}

const char *ends_words(const struct report *report, const struct setout *setout)
{
	const struct setout_end *ends = setout->ends;
	bool has_stakes = false;

	for (int i = 0; i < SETOUT_SIDES; i++)
		has_stakes = has_stakes || ends[i].is_stake;
	return say(report, "Strings so far down run %s%s; those so far across run %s%s.%s",
		from_to_words(report, &ends[SETOUT_LEFT], &ends[SETOUT_RIGHT], "across"),
		between_words(report, setout->level_stakes),
		from_to_words(report, &ends[SETOUT_TOP], &ends[SETOUT_BOTTOM], "down"),
		between_words(report, setout->upright_stakes), !has_stakes ? "" :
		" Stakes stand inside where boards would leave the plan: sight along the string "
		"past them.");
}

const char *square_words(const struct report *report, const struct setout *setout)
{
	const nm *square = setout->square;

	if (square[2] == 0)
		return "The plan is too small for a 3-4-5: its diagonals square it.";
	return say(report,
		"Square the plan's four corners by 3-4-5: %s across, %s down, %s between.",
		tape_words(report, square[setout->is_long_across ? 1 : 0]),
		tape_words(report, square[setout->is_long_across ? 0 : 1]),
		tape_words(report, square[2]));
}

/* Whether a raised bed of the entry is on the plan. */
static bool is_walled(const struct area_row *area)
{
	return area->entry && area->cells > 0 &&
		region_is_raised(&(const struct region){ .entry = area->entry });
}

const char *faces_words(const struct report *report)
{
	const struct areas *areas = &report->takeoff->areas;
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < areas->count; i++) {
		const struct area_row *area = &areas->list[i];

		if (is_walled(area))
			text_print(&words, "%s%s (%c%c%s)", words.length ? ", " :
				" Walls: the strings are their outer faces, inner faces lie "
				"inside by ",
				word_inches(report, block_value(&area->entry->block,
				BED_BLOCK)->as.size.across), area->letter, PAGE_TIE, area->name);
	}
	text_add(&words, words.length ? "." : "");
	return say_text(report, &words);
}
