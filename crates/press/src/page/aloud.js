
// Reads the screen aloud that is shown: the question with its yes and its no, or the kind at an
// end, with what may hurt. Takes the words from the screen itself, each in the language in which
// it is marked. Only voices that the device has itself are asked: a voice that works over a
// network would send the words away. Where there is none in the page's language, there is no
// button.
(function () {
  "use strict";
  var READ = "h2, .second, .touch summary strong, .touch li, .answers strong, "
    + ".kinds:not(.one) h3, .sentence:not(.missing), .kind .caution";
  var synth = window.speechSynthesis;
  var Utterance = window.SpeechSynthesisUtterance;
  var button = document.getElementById("aloud");
  var reading = null;

  // `en` of `en-GB`, which some devices write `en_GB`.
  function base(tag) { return String(tag).toLowerCase().split(/[-_]/)[0]; }

  function voiceFor(tag) {
    var own = Array.prototype.filter.call(synth.getVoices(), function (voice) {
      return voice.localService === true && base(voice.lang) === base(tag);
    });
    return own.filter(function (voice) { return voice.default; })[0] || own[0] || null;
  }

  function shown() {
    var screen = document.querySelector(".now");
    return screen && screen.id !== "start" ? screen : null;
  }

  function words(screen) {
    var parts = [];
    Array.prototype.forEach.call(screen.querySelectorAll(READ), function (place) {
      if (place.closest("[hidden]")) { return; }
      // A question is read without its number.
      var from = place.matches(".question h2") ? place.lastChild : place;
      var voice = voiceFor(place.closest("[lang]").lang);
      var text = from.textContent.trim();
      if (text && voice) { parts.push({ text: text, voice: voice }); }
    });
    return parts;
  }

  function label() {
    var name = reading ? "stop-reading" : "read-aloud";
    button.querySelector("span").textContent =
      document.querySelector("[data-said=" + name + "]").textContent;
  }

  function stop() {
    reading = null;
    synth.cancel();
    label();
  }

  function read() {
    var parts = words(shown());
    // What is being read is held on to: some browsers forget it half-way otherwise.
    var now = parts.map(function (part) {
      var spoken = new Utterance(part.text);
      spoken.voice = part.voice;
      spoken.lang = part.voice.lang;
      return spoken;
    });
    if (!now.length) { return; }
    function over() { if (reading === now) { stop(); } }
    now[now.length - 1].onend = over;
    now.forEach(function (spoken) { spoken.onerror = over; });
    reading = now;
    now.forEach(function (spoken) { synth.speak(spoken); });
    label();
  }

  function offer() {
    button.hidden = !shown() || !voiceFor(document.documentElement.lang);
  }

  if (!synth || !Utterance) { return; }
  button.addEventListener("click", function () { if (reading) { stop(); } else { read(); } });
  window.addEventListener("hashchange", function () { stop(); offer(); });
  window.addEventListener("pagehide", stop);
  // Most browsers learn only a little later which voices there are.
  if (synth.addEventListener) {
    synth.addEventListener("voiceschanged", offer);
  } else {
    synth.onvoiceschanged = offer;
  }
  label();
  offer();
}());
