// SPDX-License-Identifier: GPL-3.0-or-later
//
// A quantity moved by mouse or arrow keys in steps people set things in, with
// its value in words beside it. Until it is moved it stands where things stand
// and value() is empty.
#pragma once

#include <QWidget>
#include <functional>
#include <optional>

class QLabel;
class QSlider;

namespace ullage::ui {

class InkLabel;

class QuantitySlider : public QWidget {
  Q_OBJECT
 public:
  struct Scale {  // in the quantity's SI magnitude
    double low = 0;
    double high = 1;
    double step = 1;
  };
  QuantitySlider(const QString& label, const QString& name, QWidget* parent = nullptr);

  // Where things stand; a slider that was moved stays where it is.
  void set_scale(Scale, double now, std::function<QString(double)> print);
  void reset();
  void set_value(double);  // as if moved
  [[nodiscard]] std::optional<double> value() const;
  [[nodiscard]] QSlider* slider() const { return slider_; }

 signals:
  void moved();

 private:
  void show_value();
  [[nodiscard]] double at() const;

  QSlider* slider_;
  InkLabel* shown_;
  Scale scale_;
  double now_ = 0;
  bool moved_ = false;
  bool setting_ = false;
  std::function<QString(double)> print_;
};

}  // namespace ullage::ui
