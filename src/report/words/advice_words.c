#include "report/words/advice_words.h"

#include <math.h>
#include <stdlib.h>

/* ---- What is changed ------------------------------------------------------------------------- */

/* "B1, B2 and B3": so many regions from number `first` on. */
static const char *region_list(const struct report *report, const struct proposal *proposal,
	int first, int count)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < count; i++)
		text_print(&words, "%s%s", i == 0 ? "" : i + 1 < count ? ", " : " and ",
			plain_region(report, proposal->regions[first + i]));
	return say_text(report, &words);
}

static const char *cells_words(const struct report *report, struct rectangle r)
{
	nm cell = plot_cell(report->plot);

	return say(report, "%s x %s", word_length(report, (r.right - r.left + 1) * cell),
		word_length(report, (r.bottom - r.top + 1) * cell));
}

/* The corner is told where it is moved. */
static const char *size_words(const struct report *report, const struct proposal *proposal)
{
	struct rectangle from = proposal->from, to = proposal->to;
	bool is_moved = from.left != to.left || from.top != to.top;
	const char *corner = !is_moved ? "" : say(report, ", %s from %s",
		plain_region(report, proposal->regions[0]),
		tied(report, plain_place(report, (struct place){ to.left, to.top })));

	return say(report, "%s %s instead of %s%s",
		region_list(report, proposal, 0, proposal->region_count),
		cells_words(report, to), cells_words(report, from), corner);
}

static const struct block *bed_in_force(const struct report *report, char letter)
{
	return &plot_entry(&report->takeoff->plot, letter)->block;
}

static const char *courses_words(const struct report *report, const struct proposal *proposal)
{
	const struct block *bed = bed_in_force(report, proposal->letter);

	return say(report, "%s of %s instead of %lld", plain_letter(report, proposal->letter),
		word_count(report, proposal->courses, "course", "courses"),
		(long long)block_number(bed, BED_COURSES));
}

static const char *block_words(const struct report *report, const struct proposal *proposal)
{
	const struct block *bed = bed_in_force(report, proposal->letter);

	return say(report, "%s in %s of block %s instead of %lld of %s",
		plain_letter(report, proposal->letter),
		word_count(report, proposal->courses, "course", "courses"),
		word_size(report, &proposal->block), (long long)block_number(bed, BED_COURSES),
		word_size(report, &block_value(bed, BED_BLOCK)->as.size));
}

static const char *fence_words(const struct report *report, const struct proposal *proposal)
{
	int right = proposal->right, down = proposal->down;
	nm way = abs(right + down) * plot_cell(report->plot);

	return say(report, "Fence %s from %s to %s moved %s %s%s",
		report->plot->details.fences[proposal->fence].name,
		tied(report, plain_corner(report, proposal->leg.from)),
		tied(report, plain_corner(report, proposal->leg.to)), word_length(report, way),
		right > 0 ? "right" : right < 0 ? "left" : down > 0 ? "down" : "up",
		proposal->leg_count == 1 ? "" : proposal->leg_count == 2 ? ", with its image" :
		", with its images");
}

static const char *joined_words(const struct report *report, const struct proposal *proposal)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < proposal->region_count; i += 2)
		text_print(&words, "%s%s", i == 0 ? "" : ", ",
			region_list(report, proposal, i, 2));
	return say(report, "%s as one bed%s of %s", say_text(report, &words),
		proposal->region_count > 2 ? " each" : "", plain_letter(report, proposal->letter));
}

static const char *proposal_words(const struct report *report, const struct proposal *proposal)
{
	switch (proposal->kind) {
	case PROPOSE_SIZE:
		return size_words(report, proposal);
	case PROPOSE_COURSES:
		return courses_words(report, proposal);
	case PROPOSE_BLOCK:
		return block_words(report, proposal);
	case PROPOSE_FENCE:
		return fence_words(report, proposal);
	case PROPOSE_JOINED:
		return joined_words(report, proposal);
	}
	return "";
}

/* ---- What that spares ------------------------------------------------------------------------ */

static void add_part(struct text *words, const char *part)
{
	text_print(words, "%s%s", words->length ? ", " : "", part);
}

/* "16 pieces fewer to saw" */
static void add_count(struct text *words, const struct report *report, int64_t count,
	const char *one, const char *many, const char *purpose)
{
	if (count != 0)
		add_part(words, say(report, "%s %s %s", word_count(report, llabs(count), one, many),
			count < 0 ? "fewer" : "more", purpose));
}

static const char *difference_words(const struct report *report,
	const struct difference *difference)
{
	struct text words = TEXT_EMPTY;

	add_count(&words, report, difference->cuts, "piece", "pieces", "to saw");
	add_count(&words, report, difference->blocks, "block", "blocks", "to buy");
	add_count(&words, report, difference->panel_pieces, "panel", "panels", "to saw");
	add_count(&words, report, difference->panels, "panel", "panels", "to buy");
	if (difference->weight != 0)
		add_part(&words, say(report, "%s %s to carry",
			word_weight(report, fabs(difference->weight)),
			difference->weight < 0 ? "less" : "more"));
	if (difference->cost != 0)
		add_part(&words, say(report, "%s %s", tied(report, say(report, "%s %s",
			plain_money(report, llabs(difference->cost)),
			report->takeoff->costs.currency)),
			difference->cost < 0 ? "less" : "more"));
	return say_text(report, &words);
}

const char *proposal_sentence(const struct report *report, const struct proposal *proposal)
{
	return say(report, "%s: %s.", proposal_words(report, proposal),
		difference_words(report, &proposal->difference));
}

/* ---- Around them ----------------------------------------------------------------------------- */

struct place proposal_place(const struct report *report, const struct proposal *proposal)
{
	const struct survey *survey = &report->takeoff->survey;

	if (proposal->kind == PROPOSE_FENCE)
		return proposal->leg.from;
	if (proposal->region_count > 0)
		return survey->regions[proposal->regions[0]].first_cell;
	for (int i = 0; i < survey->region_count; i++)
		if (survey->regions[i].entry->letter == proposal->letter)
			return survey->regions[i].first_cell;
	return (struct place){ -1, -1 };
}

bool advice_has_subject(const struct takeoff *takeoff)
{
	return takeoff->walls.count + takeoff->walls.not_laid_count + takeoff->fences.count > 0;
}

const char *advice_intro(const struct advice *advice)
{
	if (!advice->is_tried)
		return "Small changes were not tried: on a plan of this size that takes too long.";
	return advice->count == 0 ? "No small change that was tried would spare anything." :
		"Small changes, each by itself, and what the whole takeoff would then have less or "
		"more.";
}

const char *advice_rest(const struct advice *advice)
{
	return advice->is_tried && !advice->is_all ?
		"Not all that could be changed was tried: that would take too long." : NULL;
}
