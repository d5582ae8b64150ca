// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dialogs/forms/hose_pieces.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <tuple>

#include "ui/dialogs/forms/enum_words.h"
#include "ui/dialogs/forms/hush.h"
#include "ui/theme/icons.h"
#include "ui/theme/theme.h"
#include "ui/widgets/entity_picker.h"
#include "ui/widgets/enum_picker.h"
#include "ui/widgets/ink_label.h"
#include "ui/widgets/quantity_edits.h"

namespace ullage::ui {

using cellar::LineMaterial;
using cellar::SegmentRecord;

namespace {

constexpr int piece_field_width = 108;

struct PieceColumn {
  enum : int { number, length, bore, material, place, rise, buttons, count };
};

EnumPicker<LineMaterial>::Options hose_materials(const report::Speaker& speaker) {
  EnumPicker<LineMaterial>::Options options;
  for (const auto& word : cellar::EnumText<LineMaterial>::words)
    options.emplace_back(static_cast<LineMaterial>(options.size()), words_of_choice(word, speaker));
  return options;
}

bool same_piece(const SegmentRecord& a, const SegmentRecord& b) {
  const auto all = [](const SegmentRecord& s) {
    return std::tie(s.segment, s.line, s.position, s.length, s.bore, s.material, s.place, s.rise,
                    s.in_use);
  };
  return all(a) == all(b);
}

QPushButton* piece_button(Icon sign, const QString& name, const QWidget* like) {
  auto* button = new QPushButton;
  button->setObjectName(name);
  button->setIcon(icon(sign, theme_of(like).text));
  button->setAutoDefault(false);
  button->setFixedWidth(control_height);
  return button;
}

}  // namespace

struct HosePieces::Row {
  std::optional<SegmentRecord> was;  // as registered
  cellar::SegmentId id;
  InkLabel* number = nullptr;
  LengthEdit* length = nullptr;
  BoreEdit* bore = nullptr;
  EnumPicker<LineMaterial>* material = nullptr;
  PlacePicker* place = nullptr;
  LengthEdit* rise = nullptr;
  QWidget* buttons = nullptr;
  QPushButton *up = nullptr, *down = nullptr, *out = nullptr;

  [[nodiscard]] std::vector<QWidget*> widgets() const {
    return {number, length, bore, material, place, rise, buttons};
  }
};

HosePieces::HosePieces(const Context& context, cellar::LineId line,
                       std::function<SegmentRecord()> first, QWidget* parent)
    : QWidget(parent), context_(context), line_(line), first_(std::move(first)) {
  setObjectName(QStringLiteral("hose_pieces"));
  build();
  keep_room();
  for (const SegmentRecord& piece : context_.cellar.status()->segments)
    if (piece.line == line_ && piece.in_use) add(piece, true);
  lay_out();
}

HosePieces::~HosePieces() { hush(*this); }

void HosePieces::build() {
  about_ = new InkLabel({}, TextRole::small, Ink::secondary);
  about_->setWordWrap(true);
  auto* table = new QWidget;
  grid_ = new QGridLayout(table);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(space::s);
  grid_->setVerticalSpacing(space::xs);
  grid_->setColumnStretch(PieceColumn::place, 1);
  for (const QString& name : {QString(), tr("Length"), tr("Bore"), tr("Material"),
                              tr("Runs through"), tr("Rises"), QString()}) {
    headings_.push_back(new InkLabel(name, TextRole::small, Ink::secondary, table));
  }
  add_ = new QPushButton(tr("Add a piece"));
  add_->setObjectName(QStringLiteral("add_piece"));
  add_->setIcon(icon(Icon::plus, theme_of(this).text));
  add_->setAutoDefault(false);
  connect(add_, &QPushButton::clicked, this, &HosePieces::add_new);
  auto* foot = new QHBoxLayout;
  foot->addWidget(add_);
  foot->addStretch(1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(space::s);
  all->addWidget(new InkLabel(tr("Pieces of hose, from the keg to the tap"), TextRole::strong));
  all->addWidget(about_);
  all->addWidget(table);
  all->addLayout(foot);
}

// The form is laid out once: a table without rows is as wide as one with rows.
void HosePieces::keep_room() {
  add({}, false);
  lay_out();
  setMinimumWidth(minimumSizeHint().width());
  for (QWidget* widget : rows_.back()->widgets()) delete widget;
  rows_.clear();
}

void HosePieces::add(const SegmentRecord& piece, bool registered) {
  auto made = std::make_unique<Row>();
  Row& row = *made;
  if (registered) row.was = piece;
  row.id = piece.segment;
  row.number = new InkLabel({}, TextRole::small, Ink::secondary);
  row.length = new LengthEdit(context_.preferences);
  row.bore = new BoreEdit(context_.preferences);
  row.material = new EnumPicker<LineMaterial>(hose_materials(context_.speaker()), nullptr,
                                              ChoiceBar::Look::drop_down);
  row.place = new PlacePicker(context_);
  row.place->set_optional(tr("With the keg"));
  row.rise = new LengthEdit(context_.preferences);
  row.length->set_required(true);
  row.bore->set_required(true);
  if (piece.length.value() > 0) row.length->set_value(piece.length);
  if (piece.bore.value() > 0) row.bore->set_value(piece.bore);
  row.material->set_value(piece.material);
  row.place->set_value(piece.place);
  row.rise->set_value(piece.rise);
  row.buttons = new QWidget;
  auto* three = new QHBoxLayout(row.buttons);
  three->setContentsMargins(0, 0, 0, 0);
  three->setSpacing(2);
  three->addWidget(row.up = piece_button(Icon::chevron_up, QStringLiteral("piece_up"), this));
  three->addWidget(row.down = piece_button(Icon::chevron_down, QStringLiteral("piece_down"), this));
  three->addWidget(row.out = piece_button(Icon::close, QStringLiteral("piece_out"), this));
  connect_row(row);
  rows_.push_back(std::move(made));
}

void HosePieces::connect_row(Row& row) {
  for (QuantityEdit* edit : std::initializer_list<QuantityEdit*>{row.length, row.bore, row.rise}) {
    connect(edit, &QuantityEdit::changed, this, &HosePieces::changed);
    edit->line_edit()->installEventFilter(this);
    edit->line_edit()->setMinimumWidth(piece_field_width);  // three stand in a row
  }
  connect(row.material, &ChoiceBar::changed, this, &HosePieces::changed);
  connect(row.place, &EntityPicker::changed, this, &HosePieces::changed);
  if (QWidget* box = row.material->focusProxy()) box->installEventFilter(this);
  row.place->combo()->installEventFilter(this);
  for (QPushButton* button : {row.up, row.down, row.out}) button->installEventFilter(this);
  connect(row.up, &QPushButton::clicked, this, [this, &row] { move(&row, -1); });
  connect(row.down, &QPushButton::clicked, this, [this, &row] { move(&row, 1); });
  connect(row.out, &QPushButton::clicked, this, [this, &row] { remove(&row); });
}

// The first is the line's hose as one piece; a later one is of the hose before it.
void HosePieces::add_new() {
  SegmentRecord piece;
  if (rows_.empty()) {
    piece = first_();
  } else {
    piece.bore = rows_.back()->bore->value().value_or(units::metres(0));
    piece.material = rows_.back()->material->value().value_or(LineMaterial::vinyl);
  }
  piece.segment = context_.cellar.fresh<cellar::SegmentId>();
  piece.line = line_;
  add(piece, false);
  lay_out();
  rows_.back()->length->line_edit()->setFocus();
  emit changed();
}

std::size_t HosePieces::index_of(const Row* row) const {
  return static_cast<std::size_t>(
      std::find_if(rows_.begin(), rows_.end(), [&](const auto& r) { return r.get() == row; }) -
      rows_.begin());
}

void HosePieces::move(const Row* row, int by) {
  const auto from = static_cast<std::ptrdiff_t>(index_of(row));
  const std::ptrdiff_t to = from + by;
  if (to < 0 || to >= static_cast<std::ptrdiff_t>(rows_.size())) return;
  QWidget* keyboard = focusWidget();
  std::swap(rows_[static_cast<std::size_t>(from)], rows_[static_cast<std::size_t>(to)]);
  lay_out();
  if (keyboard) keyboard->setFocus();
  emit changed();
}

void HosePieces::remove(const Row* row) {
  const std::size_t at = index_of(row);
  if (at >= rows_.size()) return;
  if (row->was) {
    removed_.push_back(*row->was);
    removed_.back().in_use = false;
  }
  // The button that asked for it is one of these: they go when it is done.
  for (QWidget* widget : row->widgets()) {
    grid_->removeWidget(widget);
    widget->hide();
    widget->deleteLater();
  }
  rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(at));
  lay_out();
  if (rows_.empty()) {
    add_->setFocus();
  } else {
    rows_[std::min(at, rows_.size() - 1)]->length->line_edit()->setFocus();
  }
  emit changed();
}

void HosePieces::name_row(Row& row, int number) {
  const auto of_piece = [number](const QString& what) {
    return tr("%1 of piece %2").arg(what).arg(number);
  };
  row.number->setText(QString::number(number));
  row.length->line_edit()->setAccessibleName(of_piece(tr("Length")));
  row.bore->line_edit()->setAccessibleName(of_piece(tr("Bore")));
  row.material->set_name(of_piece(tr("Material")));
  row.place->combo()->setAccessibleName(of_piece(tr("Place")));
  row.rise->line_edit()->setAccessibleName(of_piece(tr("Rise")));
  row.up->setAccessibleName(tr("Move piece %1 towards the keg").arg(number));
  row.down->setAccessibleName(tr("Move piece %1 towards the tap").arg(number));
  row.out->setAccessibleName(tr("Take out piece %1").arg(number));
  for (QPushButton* button : {row.up, row.down, row.out})
    button->setToolTip(button->accessibleName());
  row.up->setEnabled(number > 1);
  row.down->setEnabled(number < static_cast<int>(rows_.size()));
}

void HosePieces::lay_out() {
  for (int column = 0; column < PieceColumn::count; ++column) {
    InkLabel* heading = headings_[static_cast<std::size_t>(column)];
    grid_->addWidget(heading, 0, column);
    heading->setVisible(!rows_.empty());
  }
  QWidget* before = nullptr;
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    Row& row = *rows_[i];
    const std::vector<QWidget*> widgets = row.widgets();
    for (std::size_t column = 0; column < widgets.size(); ++column) {
      grid_->removeWidget(widgets[column]);
      grid_->addWidget(widgets[column], static_cast<int>(i) + 1, static_cast<int>(column),
                       column == 0 ? Qt::AlignVCenter : Qt::AlignTop);
      widgets[column]->show();
    }
    name_row(row, static_cast<int>(i) + 1);
    for (QWidget* stop : std::initializer_list<QWidget*>{
             row.length->line_edit(), row.bore->line_edit(), row.material->focusProxy(),
             row.place->combo(), row.rise->line_edit(), row.up, row.down, row.out}) {
      if (before && stop) setTabOrder(before, stop);
      if (stop) before = stop;
    }
  }
  if (before) setTabOrder(before, add_);
  about_->setText(rows_.empty()
                      ? tr("None: the hose is one piece, with the length, bore, rise and material "
                           "above. Add pieces where it changes, or leaves the cold.")
                      : tr("These count instead of length, bore, rise and material above. Alt+Up "
                           "and Alt+Down move a piece."));
}

cellar::SegmentRecord HosePieces::record_of(const Row& row, std::int64_t position) const {
  SegmentRecord piece = row.was.value_or(SegmentRecord{});
  piece.segment = row.id;
  piece.line = line_;
  piece.position = position;
  piece.length = row.length->value().value_or(units::metres(0));
  piece.bore = row.bore->value().value_or(units::metres(0));
  piece.material = row.material->value().value_or(LineMaterial::vinyl);
  piece.place = row.place->value();
  piece.rise = row.rise->value();
  piece.in_use = true;
  return piece;
}

// A position that still is in order is kept: only what was moved is logged.
std::vector<SegmentRecord> HosePieces::pieces() const {
  std::vector<SegmentRecord> out;
  std::int64_t last = 0;
  for (const auto& row : rows_) {
    const std::int64_t kept = row->was ? row->was->position : 0;
    last = kept > last ? kept : last + 1;
    out.push_back(record_of(*row, last));
  }
  return out;
}

std::vector<SegmentRecord> HosePieces::changes() const {
  std::vector<SegmentRecord> out;
  const std::vector<SegmentRecord> now = pieces();
  for (std::size_t i = 0; i < rows_.size(); ++i)
    if (!rows_[i]->was || !same_piece(*rows_[i]->was, now[i])) out.push_back(now[i]);
  out.insert(out.end(), removed_.begin(), removed_.end());
  return out;
}

bool HosePieces::show_faults() {
  QuantityEdit* first = nullptr;
  for (const auto& row : rows_) {
    for (QuantityEdit* edit :
         std::initializer_list<QuantityEdit*>{row->length, row->bore, row->rise}) {
      edit->show_fault();
      if (!first && !edit->fault().isEmpty()) first = edit;
    }
    row->place->show_fault();
    if (!first && !row->place->fault().isEmpty()) first = row->length;
  }
  if (first) first->line_edit()->setFocus();
  return first != nullptr;
}

void HosePieces::refuse(std::size_t change, const std::string& column, const QString& sentence) {
  const std::vector<SegmentRecord> all = changes();
  if (change >= all.size()) return;
  for (const auto& row : rows_) {
    if (row->id != all[change].segment) continue;
    if (column == "bore_m") {
      row->bore->set_refusal(sentence);
    } else if (column == "rise_m") {
      row->rise->set_refusal(sentence);
    } else if (column == "place") {
      row->place->set_refusal(sentence);
    } else {
      row->length->set_refusal(sentence);
    }
  }
}

bool HosePieces::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  const bool moves = key->modifiers().testFlag(Qt::AltModifier) &&
                     (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down);
  if (!moves) return QWidget::eventFilter(watched, event);
  for (const auto& row : rows_) {
    const std::vector<QWidget*> widgets = row->widgets();
    const bool inside = std::any_of(widgets.begin(), widgets.end(), [&](QWidget* w) {
      return w == watched || w->isAncestorOf(qobject_cast<QWidget*>(watched));
    });
    if (!inside) continue;
    move(row.get(), key->key() == Qt::Key_Up ? -1 : 1);
    return true;
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace ullage::ui
