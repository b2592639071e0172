'use strict';
window.addEventListener('load', () => {
  SwaggerUIBundle({
    url: '/openapi.json',
    dom_id: '#documentation',
    deepLinking: true,
    defaultModelsExpandDepth: 0,
    validatorUrl: null,
  });
});
