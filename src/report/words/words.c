#include "report/words/words.h"
#include "base/show.h"

void word_length(struct text *text, const struct report *report, nm length)
{
	size_t from = text->length;

	show_length(text, length, report->units);
	page_tie(text, from);
}

void word_inches(struct text *text, const struct report *report, nm length)
{
	size_t from = text->length;

	show_inches(text, length, report->units);
	page_tie(text, from);
}

void word_area(struct text *text, const struct report *report, double area)
{
	size_t from = text->length;

	show_area(text, area, report->units);
	page_tie(text, from);
}

void word_volume(struct text *text, const struct report *report, double volume)
{
	size_t from = text->length;

	show_volume(text, volume, report->units);
	page_tie(text, from);
}

void word_weight(struct text *text, const struct report *report, double weight)
{
	size_t from = text->length;

	show_weight(text, weight, report->units);
	page_tie(text, from);
}

void word_size(struct text *text, const struct report *report, const struct size *size)
{
	word_inches(text, report, size->along);
	text_add(text, " x ");
	word_inches(text, report, size->across);
	text_add(text, " x ");
	word_inches(text, report, size->up);
}

void word_region(struct text *text, const struct report *report, int region)
{
	char name[REGION_NAME_MOST];

	survey_region_name(&report->takeoff->survey.regions[region], name);
	text_add(text, name);
}

nm word_saw_length(nm place, nm fit)
{
	return place > fit ? place - fit : 0;
}

void word_cut(struct text *text, const struct report *report, const struct cut *cut, nm fit)
{
	int alike;

	for (int i = 0; i < cut->piece_count; i += alike) {
		for (alike = 1; i + alike < cut->piece_count &&
			cut->pieces[i + alike] == cut->pieces[i];)
			alike++;
		text_print(text, "%s%d%cof%c", i ? " + " : "", alike, PAGE_TIE, PAGE_TIE);
		word_inches(text, report, word_saw_length(cut->pieces[i], fit));
	}
}

void word_amount(struct text *text, const struct report *report, const struct item *item, double amount)
{
	size_t from = text->length;

	switch (item->unit) {
	case UNIT_EACH:
		if (amount == (double)(int64_t)amount)
			show_count(text, (int64_t)amount);
		else
			show_decimal(text, amount, 2); /* of packs that are sold whole */
		break;
	case UNIT_M:
		show_length(text, (nm)(amount * (double)NM_PER_M + 0.5), report->units);
		break;
	case UNIT_M2:
		show_area(text, amount, report->units);
		break;
	case UNIT_M3:
		show_volume(text, amount, report->units);
		break;
	case UNIT_KG:
		show_weight(text, amount, report->units);
		break;
	}
	page_tie(text, from);
}

void word_count(struct text *text, int64_t count, const char *one, const char *many)
{
	size_t from = text->length;

	show_count(text, count);
	text_print(text, " %s", count == 1 ? one : many);
	page_tie(text, from);
}

void word_group(struct text *text, const struct report *report, const struct group *group,
	int (*region_of)(const struct takeoff *, int))
{
	for (int i = 0; i < group->count; i++) {
		if (i > 0)
			text_add(text, i + 1 < group->count ? ", " : " and ");
		word_region(text, report, region_of(report->takeoff, group->members[i]));
	}
}

int64_t caps_not_laid(const struct takeoff *takeoff)
{
	int64_t count = 0;

	for (int i = 0; i < takeoff->wall_count; i++) {
		const struct wall *wall = &takeoff->walls[i];

		count += !wall->has_cap &&
			!size_is_none(&block_effective(wall->bed, BED_CAP)->as.size);
	}
	return count;
}
