(function () {
  'use strict';
  var steps = Array.prototype.slice.call(document.querySelectorAll('.step'));
  var bench = document.getElementById('bench');
  if (!bench || steps.length === 0) { return; }
  bench.hidden = false;
  var key = 'counterpull ' + document.title + ' ' + steps.length + ' ';
  var at = 0;
  var lock = null;

  function remembered(name) {
    try { return window.localStorage.getItem(key + name); } catch (e) { return null; }
  }
  function remember(name, value) {
    try { window.localStorage.setItem(key + name, value); } catch (e) { /* ticks last as long as the page */ }
  }
  function stayOn() {
    if (navigator.wakeLock) {
      navigator.wakeLock.request('screen').then(function (got) { lock = got; }, function () { lock = null; });
    }
  }

  steps.forEach(function (step) {
    var box = step.querySelector('input');
    box.checked = remembered(step.id) === 'done';
    step.classList.toggle('done', box.checked);
    box.addEventListener('change', function () {
      step.classList.toggle('done', box.checked);
      remember(step.id, box.checked ? 'done' : '');
    });
  });

  function show(number) {
    at = Math.max(0, Math.min(steps.length - 1, number));
    steps.forEach(function (step, i) { step.classList.toggle('now', i === at); });
    window.scrollTo(0, 0);
  }
  function firstOpen() {
    for (var i = 0; i !== steps.length; i += 1) {
      if (!steps[i].querySelector('input').checked) { return i; }
    }
    return steps.length - 1;
  }

  document.getElementById('single').addEventListener('click', function () {
    var single = document.body.classList.toggle('single');
    this.textContent = single ? 'Whole plan' : 'One step per screen';
    if (single) { show(firstOpen()); stayOn(); } else if (lock) { lock.release(); lock = null; }
  });
  document.getElementById('back').addEventListener('click', function () { show(at - 1); });
  document.getElementById('next').addEventListener('click', function () { show(at + 1); });

  function beep(times) {
    var Sound = window.AudioContext || window.webkitAudioContext;
    if (!Sound) { return; }
    var sound = new Sound();
    for (var i = 0; i !== times; i += 1) {
      var tone = sound.createOscillator();
      tone.frequency.value = 880;
      tone.connect(sound.destination);
      tone.start(sound.currentTime + i * 0.6);
      tone.stop(sound.currentTime + i * 0.6 + 0.3);
    }
  }

  Array.prototype.forEach.call(document.querySelectorAll('.timer'), function (button) {
    button.hidden = false;
    var ticking = null;
    var end = 0;
    function tell() {
      var left = Math.ceil((end - Date.now()) / 1000);
      if (left > 0) {
        button.textContent = Math.floor(left / 60) + ':' + ('0' + left % 60).slice(-2) + ' left';
      } else {
        window.clearInterval(ticking);
        ticking = null;
        button.classList.add('over');
        button.textContent = 'Time is up: check it';
        beep(5);
      }
    }
    button.addEventListener('click', function () {
      if (ticking) { return; }
      button.classList.remove('over');
      end = Date.now() + Number(button.getAttribute('data-seconds')) * 1000;
      ticking = window.setInterval(tell, 500);
      stayOn();
      tell();
    });
  });
}());
