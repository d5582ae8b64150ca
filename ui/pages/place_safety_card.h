// SPDX-License-Identifier: GPL-3.0-or-later
//
// One place on the Safety page.
#pragma once

#include <QWidget>
#include <optional>
#include <string>

#include "core/cellar/room_safety.h"
#include "ui/context.h"

class QPushButton;

namespace ullage::ui {

class Banner;
class FactList;
class InkLabel;

class PlaceSafetyCard : public QWidget {
  Q_OBJECT
 public:
  explicit PlaceSafetyCard(const Context& context, QWidget* parent = nullptr);
  void show_place(cellar::PlaceSafety, const std::optional<std::string>& country);

 private:
  void show_air(const report::Speaker&);
  void show_facts(const report::Speaker&);
  void show_limits(const report::Speaker&, const std::optional<std::string>& country);
  [[nodiscard]] QString limit_words(const physics::ExposureLimit&) const;
  [[nodiscard]] static QString lacking_words(const cellar::LimitsOfCountry&,
                                             const std::optional<std::string>& country);
  [[nodiscard]] QString bottle_words(const report::Speaker&) const;
  [[nodiscard]] QString alarm_words(const report::Speaker&) const;

  Context context_;
  cellar::PlaceSafety place_;
  InkLabel* name_;
  Banner* air_;
  FactList* facts_;
  QWidget* limits_part_;
  FactList* limits_;
  InkLabel* elsewhere_words_;
  FactList* elsewhere_;
  QPushButton* alarm_;
  QPushButton* edit_;
  QPushButton* import_;
};

}  // namespace ullage::ui
