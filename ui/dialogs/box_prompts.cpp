// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/box_prompts.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QStandardPaths>

#include "ui/context.h"
#include "ui/dialogs/message_box.h"
#include "ui/dialogs/text_limits.h"
#include "ui/widgets/text_edit.h"

namespace ullage::ui {

namespace {

struct BoxText {
  Q_DECLARE_TR_FUNCTIONS(BoxText)
};

QString folder_or_documents(const QString& folder) {
  return folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                          : folder;
}

// "Cellar (*.cellar)": a name typed without an ending gets the filter's.
QString with_ending(const QString& path, const QString& filter) {
  if (path.isEmpty() || !QFileInfo(path).suffix().isEmpty()) return path;
  const auto from = filter.indexOf(QLatin1String("(*."));
  const auto to = filter.indexOf(QLatin1Char(')'), from);
  return from < 0 || to < 0 ? path : path + filter.mid(from + 2, to - from - 2);
}

}  // namespace

std::optional<QString> BoxPrompts::taken(const QString& path) {
  if (path.isEmpty()) return std::nullopt;
  folder_ = QFileInfo(path).absolutePath();
  return path;
}

std::optional<QString> BoxPrompts::open_cellar_file(QWidget* parent) {
  return open_file(parent, BoxText::tr("Open a cellar"),
                   BoxText::tr("Cellars (*.cellar);;All files (*)"));
}

std::optional<QString> BoxPrompts::save_file(QWidget* parent, const QString& title,
                                             const QString& proposed, const QString& filter) {
  const QString start = QDir(folder_or_documents(folder_)).filePath(proposed);
  return taken(with_ending(QFileDialog::getSaveFileName(parent, title, start, filter), filter));
}

std::optional<QString> BoxPrompts::open_file(QWidget* parent, const QString& title,
                                             const QString& filter) {
  return taken(QFileDialog::getOpenFileName(parent, title, folder_or_documents(folder_), filter));
}

bool BoxPrompts::confirm(QWidget* parent, const QString& question, const QString& detail,
                         const QString& action) {
  MessageBox box(question, detail, parent);
  box.add_way(action, ButtonRole::primary);
  box.add_cancel();
  return box.ask() == 0;
}

bool BoxPrompts::confirm_risk(QWidget* parent, const QString& question, const QString& detail,
                              const QString& action, const QString& harmless) {
  MessageBox box(question, detail, parent);
  box.add_way(action, ButtonRole::plain);
  box.add_harmless(harmless);
  return box.ask() == 0;
}

void BoxPrompts::tell(QWidget* parent, const QString& what, const QString& detail) {
  MessageBox box(what, detail, parent);
  box.add_way(BoxText::tr("Close"), ButtonRole::plain);
  box.ask();
}

int BoxPrompts::choose(QWidget* parent, const QString& what, const QString& detail,
                       const QStringList& actions) {
  MessageBox box(what, detail, parent);
  for (const QString& action : actions) {
    box.add_way(action, action == actions.first() ? ButtonRole::primary : ButtonRole::plain);
  }
  box.add_cancel();
  return box.ask();
}

std::optional<QString> BoxPrompts::ask_reason(QWidget* parent, const QString& question) {
  MessageBox box(question, {}, parent);
  auto* reason = new TextEdit(reason_limit());
  reason->set_required(true);
  reason->line_edit()->setAccessibleName(question);
  reason->line_edit()->setObjectName(QStringLiteral("reason"));
  box.add_field(reason);
  box.set_ready([reason] {
    reason->show_fault();
    return reason->fault().isEmpty();
  });
  box.add_way(BoxText::tr("Continue"), ButtonRole::primary);
  box.add_cancel();
  return box.ask() == 0 ? std::optional(q(reason->value())) : std::nullopt;
}

}  // namespace ullage::ui
