#include "report/svg/plant_marks.h"
#include "base/stop.h"
#include "report/svg/type.h"

static nm radius_of(const struct sheet *sheet, const struct planting_row *row)
{
	return scaled(sheet->report.takeoff->planting.plants[row->kind].spread,
		sheet->layout->scale) / 2;
}

void plant_marks_draw(struct sheet *sheet)
{
	const struct planting *planting = &sheet->report.takeoff->planting;

	if (planting->count == 0)
		return;
	ink_open(sheet->report.out, "clip-path=\"url(#field)\"");
	sheet_pen(sheet, PEN_PLANT);
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];

		for (int j = 0; j < row->spot_count && !stop_asked(); j++)
			ink_circle(sheet->report.out, sheet_spot(sheet, row->spots[j].at),
				radius_of(sheet, row));
	}
	sheet_lift(sheet);
	ink_close(sheet->report.out);
}

void plant_marks_name(struct sheet *sheet)
{
	const struct planting *planting = &sheet->report.takeoff->planting;

	if (planting->count == 0)
		return;
	sheet_pen(sheet, PEN_WORDS);
	for (int i = 0; i < planting->count && !stop_asked(); i++) {
		const struct planting_row *row = &planting->list[i];
		const char letter[] = { row->letter, '\0' };

		for (int j = 0; j < row->spot_count && !stop_asked(); j++)
			sheet->left_out[LEFT_PLANTS] += !sheet_try(sheet, letter,
				sheet_spot(sheet, row->spots[j].at),
				(struct type){ .size = TYPE_LEAST });
	}
	sheet_lift(sheet);
}

static void draw_sign(struct sheet *sheet, struct at at, const struct remark *remark)
{
	const struct plant_sum *sum = remark->of;
	const struct at middle = { at.x + 45 * NM_PER_MM / 10, at.y + 2 * NM_PER_MM };
	const char letter[] = { sum->letter, '\0' };

	sheet_pen(sheet, PEN_PLANT);
	ink_circle(sheet->report.out, middle, 2 * NM_PER_MM);
	sheet_lift(sheet);
	sheet_pen(sheet, PEN_WORDS);
	ink_words(sheet->report.out, middle, (struct type){ .size = TYPE_LEAST,
		.anchor = ANCHOR_MIDDLE }, letter);
	sheet_lift(sheet);
	remark_words(sheet, (struct at){ at.x + 11 * NM_PER_MM, at.y }, remark);
}

void plant_marks_signs(struct remark_list *list, const struct report *report)
{
	const struct planting *planting = &report->takeoff->planting;

	for (int i = 0; i < planting->plant_count; i++) {
		const struct plant_sum *sum = &planting->plants[i];
		struct remark *remark;

		if (sum->count == 0)
			continue;
		remark = remark_add(list, 4 * NM_PER_MM, (COLUMN_WIDTH - 11) * NM_PER_MM,
			say(report, "%s, %s: as wide as it grows, %s", sum->name,
			plain_count(report, sum->count), plain_length(report, sum->spread)));
		remark->draw = draw_sign;
		remark->of = sum;
	}
}
