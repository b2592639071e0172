'use strict';
// Before anything is painted: the theme that somebody chose at this screen. 'dim' is for a darkened room, warm and low; else light.
document.documentElement.dataset.theme = localStorage.getItem('wallchart.theme') === 'dim' ? 'dim' : 'light';
