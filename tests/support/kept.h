/* What was written in the scratch folder (support/folder.h), read back. */
#ifndef SUPPORT_KEPT_H
#define SUPPORT_KEPT_H

#include "plot/history/journal_text.h"

/* Whether the file holds the plot. */
bool kept_plot(const char *name, const struct plot *expected);
/* Fails unless the file is a whole journal that leads to the plot. Returns its stamp. */
struct plot_stamp kept_check_journal(const char *name, const struct plot *expected);

#endif
